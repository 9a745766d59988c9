using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of `code`.</summary>
internal static class CodeFields
{
    public static readonly ValueField<CodeEdition> Edition = new("code.edition", Choices.Edition, "2023",
        "The edition of the NEC that citations follow") { Default = "2023" };

    public static readonly ValueField<Occupancy> Occupancy = new("code.occupancy", Choices.Occupancy, "non-dwelling",
        "Whether people live there") { Default = "dwelling" };

    public static readonly ImmutableArray<Field> All = [Edition, Occupancy];
}
