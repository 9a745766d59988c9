namespace PanelTui.Documents.Merging;

/// <summary>How conflicts are marked in a file: the names of the three versions and how many characters a marker has.</summary>
public sealed record MarkerLabels(string Ours, string Ancestor, string Theirs, int Size = 7)
{
    public static readonly MarkerLabels Default = new("ours", "base", "theirs");

    /// <summary>The lines of all versions with a marker line before, between and after.</summary>
    public string Around(MergeConflict conflict) =>
        $"{Marker('<', Ours)}{Whole(conflict.Ours)}{Marker('|', Ancestor)}{Whole(conflict.Ancestor)}"
        + $"{Marker('=', "")}{Whole(conflict.Theirs)}{Marker('>', $"{Theirs} ({Line(conflict.ToString())})")}";

    private string Marker(char sign, string label) => $"{new string(sign, Size)} {Line(label)}".TrimEnd() + "\n";

    private static string Line(string text) => string.Concat(text.Select(letter => char.IsControl(letter) ? ' ' : letter));

    private static string Whole(string lines) => lines.Length == 0 || lines.EndsWith('\n') ? lines : lines + "\n";
}
