namespace PanelTui.Engine.Rules;

/// <summary>How much a finding weighs; an error makes the check fail.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}

/// <summary>The words for a severity.</summary>
public static class SeverityWords
{
    extension(Severity severity)
    {
        /// <summary>As a report writes it: `warning`.</summary>
        public string Word => Row(severity).Word;

        /// <summary>The letter where there is no room for the word: `W`.</summary>
        public string Mark => Row(severity).Mark;
    }

    private static (string Word, string Mark) Row(Severity severity) => severity switch
    {
        Severity.Note => ("note", "N"),
        Severity.Warning => ("warning", "W"),
        Severity.Error => ("error", "E"),
        _ => throw Unnamed.Of(severity),
    };
}
