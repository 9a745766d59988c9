using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The chain from the source to the bus, link by link.</summary>
public static class ChainDerivations
{
    public static Derivation Why(this SourceChain chain) => new(
        FigureNames.Chain,
        "From the source to the bus: each link, and the device ahead of it",
        [.. chain.Links.Select(Step), .. Capacity(chain.Capacity), Verdict(chain)]);

    private static DerivationStep Step(ChainLink link) => SizingSteps.Step(
        $"{Capital(link.Name)}{Against(link)}", link.Rating ?? Amperes.Zero, link.IsStated ? link.Cite : Citation.Schedule);

    private static string Against(ChainLink link) => link switch
    {
        { IsStated: false } => ": not stated",
        { Ok: false, Ahead: { } ahead } => $": weak, {ahead} ahead",
        { Ahead: { } ahead } => $": {ahead} ahead",
        _ => "",
    };

    private static IEnumerable<DerivationStep> Capacity(SourceCapacity? capacity) => capacity is null ? [] :
    [
        .. capacity.Needed.Legs.Select(leg => new DerivationStep(
            $"To carry on {leg}, {Basis(capacity)}", capacity.Needed[leg].Value, "W", capacity.Cite)),
    ];

    private static string Basis(SourceCapacity capacity) => capacity.Basis switch
    {
        CapacityBasis.WholeLoad => "automatic without load management: the whole calculated load",
        CapacityBasis.Managed => $"the largest managed set: {capacity.Scenario}",
        CapacityBasis.Selected => $"what is selected: {capacity.Scenario}",
        _ => throw Unnamed.Of(capacity.Basis),
    };

    private static DerivationStep Verdict(SourceChain chain) => chain.FirstWeak is { } weak
        ? SizingSteps.Step($"First weak link: {weak.Name}", weak.Rating ?? Amperes.Zero, Citation.Arithmetic)
        : SizingSteps.Step($"No weak link among those stated, {chain.NotStated.Count()} not stated; the smallest", Smallest(chain), Citation.Arithmetic);

    private static Amperes Smallest(SourceChain chain) => chain.Links.Select(link => link.Rating).OfType<Amperes>().DefaultIfEmpty().Min();

    private static string Capital(string name) => $"{char.ToUpperInvariant(name[0])}{name[1..]}";
}
