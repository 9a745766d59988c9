namespace PanelTui.Documents.Yaml;

/// <summary>Our sentences for the YAML library's. One that is not in the table is passed on as it is.</summary>
internal static class LibrarySentences
{
    private static readonly (string Theirs, string Ours)[] Table =
    [
        ("found invalid tab as indentation", "a tab indents this line; YAML is indented with spaces"),
        ("found a tab character that violate indentation", "a tab indents this line; YAML is indented with spaces"),
        ("found character that cannot start any token", "no value may start with this character; put it in quotes"),
        ("did not find expected '-' indicator", "this line is neither an item of the list above ('- ') nor indented as its end"),
        ("did not find expected key", "this line fits no key above it; check its indentation and quotes"),
        ("did not find expected ',' or '}'", "expected ',' or '}' here"),
        ("did not find expected ',' or ']'", "expected ',' or ']' here"),
        ("found unexpected end of stream", "the quote that opens here is never closed"),
        ("found unexpected document indicator", "the quote that opens here is not closed before '---' or '...'"),
        ("found unknown escape character", "after a backslash in double quotes this letter has no meaning; write \\\\ for a backslash"),
        ("found wrong indentation", "the text in quotes goes on in a line that is not indented"),
        ("did not find expected hexadecimal number", "the backslash escape needs more hexadecimal digits"),
        ("found invalid Unicode", "the backslash escape names no character"),
        ("found invalid mapping", "a second ': ' in one value; put the value in quotes"),
        ("could not find expected ':'", "a ':' is missing after the key that starts here"),
        ("Mapping values are not allowed", "a ':' is not expected here; check the indentation, or put the value in quotes"),
        ("Mapping keys are not allowed", "a key is not expected here; check the indentation"),
        ("Block sequence entries are not allowed", "a list cannot start here; put each '- ' on a line of its own"),
        ("did not find expected node content", "a value is missing here"),
        ("did not find expected token", "a value is missing here"),
        ("found more than one anchor", "one value cannot have two names (&)"),
        ("found undefined tag handle", "the tag here is not declared; leave it out"),
        ("found a comment without", "a space is missing before '#'"),
        ("found invalid comment after", "a space is missing before '#'"),
        ("did not find expected comment or line break", "after '|' or '>' only a comment may follow on the line"),
        ("found an indentation indicator equal to 0", "the indentation after '|' or '>' must be 1 to 9"),
        ("found extra spaces in first line", "the first line of this text is indented deeper than the others"),
        ("found more spaces in lines above", "a blank line in this text has more spaces than its first line"),
        ("found a comment between adjacent scalars", "the value goes on after a comment; put it in quotes"),
        ("Expected <document start>", "the text goes on after its end; check the indentation of this line"),
        ("expected <document start>", "the text goes on after its end; check the indentation of this line"),
        ("scanner should contain no more tokens", "the text goes on after its end; check the indentation of this line"),
        ("found incompatible YAML", "the %YAML line asks for a version other than 1.1 and 1.2"),
        ("Found incompatible YAML", "the %YAML line asks for a version other than 1.1 and 1.2"),
        ("duplicate %YAML", "there is more than one %YAML line"),
        ("duplicate %TAG", "one tag prefix is declared twice"),
        ("found invalid content after '...'", "nothing may follow '...' on its line"),
        ("While scanning an anchor or alias", "a name is missing after '&' or '*'; put the value in quotes if it is a text"),
        ("While scanning a tag", "a tag that starts with '!' is broken; put the value in quotes if it is a text"),
        ("directive", "a line that starts with '%' is broken; leave it out"),
    ];

    public static string For(string message)
    {
        foreach (var (theirs, ours) in Table)
        {
            if (message.Contains(theirs, StringComparison.Ordinal)) return ours;
        }

        return $"this is not YAML that can be read ({message.TrimEnd('.')})";
    }

    /// <summary>Whether the error's end, not its start, is the place to look at.</summary>
    public static bool PointsToEnd(string message) => message.Contains("tab", StringComparison.Ordinal);
}
