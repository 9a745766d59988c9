using PanelTui.Engine.Demand.Parts;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand.Methods;

/// <summary>Article 220 Part III for dwellings: each category with its own demand factor.</summary>
public sealed class DwellingStandard : DemandMethod
{
    public override DemandMethodName Name => DemandMethodName.DwellingStandard;

    public override LackingFigure? Lacks(DemandBasis basis) => FloorArea(basis);

    public override DemandWorksheet Work(DemandCase demand)
    {
        var dwelling = StandardDwelling.Of(demand);
        return new DemandWorksheet(Name, dwelling.Counted.Loads, dwelling.Lines)
        {
            LeftOut = dwelling.Counted.LeftOut,
            Given = dwelling.Lighting.Given,
        };
    }
}
