using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// Finds what git leaves behind where two sides could not be merged, before it is misread as broken YAML.
/// </summary>
internal static class ConflictMarkers
{
    private const string Message = "unresolved merge conflict: the editor opens such a file to settle it; or choose one side and delete the marker lines";

    private static readonly string[] Starts = ["<<<<<<< ", "||||||| ", ">>>>>>> "];

    public static void Refuse(SourceText source)
    {
        for (var line = 1; line <= source.LineCount; line++)
        {
            var text = source.Text.AsSpan(source.Lines.StartOf(line));
            if (text is not ['<' or '|' or '>', ..]) continue;
            foreach (var start in Starts)
            {
                if (!text.StartsWith(start, StringComparison.Ordinal)) continue;
                throw YamlProblem.At(source, source.Lines.StartOf(line), Message);
            }
        }
    }
}
