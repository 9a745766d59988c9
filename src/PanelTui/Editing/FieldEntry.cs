using System.Collections.Immutable;
using PanelTui.Beginning;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.Editing;

/// <summary>A key of the format as a field of a form: its words, its value, what may stand there.</summary>
internal static class FieldEntry
{
    /// <summary>More words than this do not fit into the rows of a refusal.</summary>
    private const int MostWords = 8;

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
        var meant = isWrong ? Meant(field, text) : [];
        if (meant.IsEmpty) return new FormRefusal(at, isWrong && field.Allowed.Length > MostWords ? Unlisted(field, text) : reason);
        var others = meant.Length > 1 ? $"; or {string.Join(", ", meant.Skip(1).Take(4))}" : "";
        return new FormRefusal(at, $"\"{text.Trim()}\" could be {meant[0]}: Enter takes it{others}", meant[0]);
    }

    private static ImmutableArray<string> Meant(Field field, string text) =>
        field.Path == "circuits[].loads[].kind" && UsualLoads.Called(text) is { } usual ? [usual.Kind] : field.Meant(text);

    private static string Unlisted(Field field, string text) =>
        $"\"{text.Trim()}\" is not one of the {field.Allowed.Length} to choose from, which ↓ goes through{DidYouMean.Hint(text, field.Allowed)}";

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
