using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>Reads `code`.</summary>
internal static class CodeReader
{
    public static CodeBasis Read(MappingReader code) => new()
    {
        Edition = code.Value(CodeFields.Edition) ?? CodeBasis.Default.Edition,
        Occupancy = code.Value(CodeFields.Occupancy) ?? CodeBasis.Default.Occupancy,
    };
}
