using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Reading;

/// <summary>
/// Notes a control character in a text: a backslash in double quotes is more often a slip than a wish for one.
/// </summary>
internal static class ControlCharacters
{
    public static void Note(Field field, YamlNode node, DiagnosticList diagnostics)
    {
        foreach (var letter in node.Value)
        {
            if (!char.IsControl(letter)) continue;
            diagnostics.Note(
                DiagnosticCodes.ControlCharacter,
                node.Span,
                $"{field.Key} has the control character U+{(int)letter:X4} in it; "
                + "in double quotes a backslash is written twice");
            return;
        }
    }
}
