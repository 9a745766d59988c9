namespace PanelTui.Documents.Tests.Writing.Campaign;

/// <summary>
/// What a text says, as nested values; a second opinion that shares no code with the program's own meaning.
/// </summary>
/// <param name="Marks">Tag and anchor.</param>
/// <param name="What">A scalar's type and text, an alias, or the kind of a collection.</param>
/// <param name="Parts">A list's items, or a mapping's keys and values in turn.</param>
internal sealed record Said(string Marks, string What, List<Said> Parts)
{
    public static Said Scalar(string text, bool isPlain) => new("", Typed(isPlain ? TypeOf(text) : "text", text), []);

    public Said Copy() => this with { Parts = [.. Parts.Select(part => part.Copy())] };

    public override string ToString() => Parts.Count == 0 ? Marks + What : $"{Marks}{What}({string.Join("; ", Parts)})";

    private static string Typed(string type, string text) => type == "null" ? type : $"{type} {text}";

    // The core schema of YAML 1.2.2, section 10.3.2, by its own regular expressions.
    private static string TypeOf(string text) =>
        Matches(text, @"null|Null|NULL|~|") ? "null"
        : Matches(text, "true|True|TRUE|false|False|FALSE") ? "bool"
        : Matches(text, "[-+]?[0-9]+|0o[0-7]+|0x[0-9a-fA-F]+") ? "int"
        : Matches(text, @"[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?|[-+]?(\.inf|\.Inf|\.INF)|\.nan|\.NaN|\.NAN") ? "float"
        : "text";

    private static bool Matches(string text, string pattern) =>
        System.Text.RegularExpressions.Regex.IsMatch(text, $@"\A(?:{pattern})\z");
}
