using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys at the top of the file.</summary>
internal static class TopFields
{
    public static readonly ValueField<int> Schedule = new("schedule", new VersionForm(), "1",
        "The version of the format, the first key of the file") { IsRequired = true };

    public static readonly SectionField Panel = new("panel", FieldShape.Mapping,
        "The panelboard itself") { IsRequired = true };

    public static readonly SectionField Code = new("code", FieldShape.Mapping,
        "Which edition of the code the citations follow, and what the building is");

    public static readonly SectionField Demand = new("demand", FieldShape.Mapping,
        "How the calculated load is worked out");

    public static readonly SectionField Feeder = new("feeder", FieldShape.Mapping,
        "From the transfer equipment to this panel");

    public static readonly SectionField Transfer = new("transfer", FieldShape.Mapping,
        "What chooses between the normal supply and the standby source");

    public static readonly SectionField Source = new("source", FieldShape.Mapping,
        "The generator or inverters behind the transfer equipment");

    public static readonly SectionField Circuits = new("circuits", FieldShape.ListOfMappings,
        "The breakers of the panel and what hangs on them, in any order");

    public static readonly SectionField Scenarios = new("scenarios", FieldShape.ListOfMappings,
        "What runs together on the standby source");

    public static readonly SectionField Accepted = new("accepted", FieldShape.ListOfMappings,
        "Findings that are let stand for a reason, and listed apart");

    public static readonly ImmutableArray<Field> All =
        [Schedule, Panel, Code, Demand, Feeder, Transfer, Source, Circuits, Scenarios, Accepted];
}
