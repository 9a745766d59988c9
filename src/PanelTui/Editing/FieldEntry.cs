using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.Editing;

/// <summary>A key of the format as a field of a form: its words, its value, what may stand there.</summary>
internal static class FieldEntry
{
    /// <param name="session">The open file.</param>
    /// <param name="path">Where the key stands.</param>
    /// <param name="columns">Its width; 0 shares what the others leave.</param>
    /// <param name="label">What it is called; else by the name of the format for the screen.</param>
    public static FormField Of(Session session, YamlPath path, int columns = 0, string? label = null)
    {
        var field = FieldBook.At(path)!;
        return new FormField(label ?? field.Title, FieldValue.At(session.Now, path) ?? "", columns, HintOf(field))
        {
            Offers = typed => FieldOffers.Of(session, path, typed),
        };
    }

    /// <summary>The refusal of a text for a key, with what it may have been meant as.</summary>
    public static FormRefusal Refused(int at, Field field, string text, string reason)
    {
        var isWrong = text.Trim().Length > 0 && field.WhyNot(field.Written(text)) is not null;
        var meant = isWrong ? field.Meant(text) : ImmutableArray<string>.Empty;
        if (meant.IsEmpty) return new FormRefusal(at, reason);
        var others = meant.Length > 1 ? $"; or {string.Join(", ", meant.Skip(1).Take(4))}" : "";
        return new FormRefusal(at, $"\"{text.Trim()}\" could be {meant[0]}: Enter takes it{others}", meant[0]);
    }

    /// <summary>What is wrong with a text by itself; nothing is wrong with one that may be left out.</summary>
    public static FormRefusal? WhyNot(int at, Field field, string text)
    {
        if (text.Trim().Length == 0) return field.IsRequired ? new FormRefusal(at, $"{field.Key} is needed: {field.Expected}") : null;
        return field.WhyNot(field.Written(text)) is { } reason ? Refused(at, field, text, reason) : null;
    }

    private static string HintOf(Field field)
    {
        if (field.Unit.Length > 0) return $"{field.Help} ({field.Unit})";
        return field.Allowed.IsEmpty && !field.IsFreeText ? $"{field.Help}: {field.Expected}" : field.Help;
    }
}
