using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>
/// From 2023 on the inlet for a portable generator is outside the building; where it is no key tells.
/// </summary>
public sealed class InletToBeOutsideRule : CodeRule
{
    /// <summary>
    /// Up to this a portable set needs no further disconnect at the building, and the rule on its inlet holds.
    /// </summary>
    public static readonly Watts MostPortable = 15_000.W;

    public override string Name => "inlet-to-be-outside";

    public override Severity Severity => Severity.Note;

    public override string Summary => "The inlet for a portable generator of at most 15 kW is outside the building.";

    public override string Why =>
        "An inlet indoors makes people run the engine at a door or a window, and the exhaust comes in.";

    public override string Advice => "Look where the inlet is.";

    /// <remarks>As seen in a trade forum: forums.mikeholt.com, thread 2572555.</remarks>
    public override CodeSection? Section { get; } = Nec.Section((2023, "702.12(B)"));

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (IsIn(context.Edition) && context is { Schedule.Source: { Kind: SourceKind.Generator, Outlet: { } outlet } source }
            && !(source.Continuous > MostPortable))
            yield return Found(context, $"A portable generator plugs in at a {outlet} inlet, which is to be outside the building.");
    }

    private static bool IsIn(CodeEdition edition) => edition switch
    {
        CodeEdition.Nec2017 or CodeEdition.Nec2020 => false,
        CodeEdition.Nec2023 => true,
        _ => throw Unnamed.Of(edition),
    };
}
