using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>Reads `demand`.</summary>
internal static class DemandReader
{
    public static DemandBasis Read(MappingReader demand) => new()
    {
        Method = demand.Value(DemandFields.Method) ?? DemandBasis.Default.Method,
        FloorArea = demand.Value(DemandFields.FloorArea),
        MeasuredPeak = demand.Value(DemandFields.MeasuredPeak),
        MeasuredDays = demand.Value(DemandFields.MeasuredDays),
    };
}
