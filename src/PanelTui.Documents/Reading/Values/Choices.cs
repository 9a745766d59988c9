using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading.Values;

/// <summary>The words of the format and what they mean: every member of an enum by its word.</summary>
internal static class Choices
{
    public static readonly ChoiceForm<PanelSystem> System =
        new([.. PanelSystem.All.Select(system => (system.Name, system))]) { Guesses = false };

    public static readonly ChoiceForm<CodeEdition> Edition = Of<CodeEdition>(edition => edition.Word);

    public static readonly ChoiceForm<Occupancy> Occupancy = Of<Occupancy>(occupancy => occupancy.Word);

    public static readonly ChoiceForm<DemandMethodName> Method = Of<DemandMethodName>(method => method.Word);

    public static readonly ChoiceForm<TransferKind> Transfer = Of<TransferKind>(kind => kind.Word);

    public static readonly ChoiceForm<SourceKind> Source = Of<SourceKind>(kind => kind.Word);

    public static readonly ChoiceForm<SourceArrangement> Arrangement =
        Of<SourceArrangement>(arrangement => arrangement.Word);

    public static readonly ChoiceForm<SourceNeutral> Neutral = Of<SourceNeutral>(neutral => neutral.Word);

    public static readonly ChoiceForm<Conduit> Conduit = Of<Conduit>(conduit => conduit.Word);

    public static readonly ChoiceForm<ChargingFrom> Charging = Of<ChargingFrom>(from => from.Word);

    public static readonly ChoiceForm<Protection> Protection = Of<Protection>(protection => protection.Word);

    public static readonly ChoiceForm<Across> Across = Of<Across>(across => across.Word);

    public static readonly ChoiceForm<LoadKind> Load = Of<LoadKind>(kind => kind.Word);

    private static ChoiceForm<T> Of<T>(Func<T, string> word) where T : struct, Enum =>
        new([.. Enum.GetValues<T>().Select(member => (word(member), member))]);
}
