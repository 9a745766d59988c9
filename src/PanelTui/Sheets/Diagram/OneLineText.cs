using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Presentation;

namespace PanelTui.Sheets.Diagram;

/// <summary>The one-line diagram in letters, for a terminal: what <see cref="OneLine"/> draws, in plain ASCII of its own.</summary>
internal static class OneLineText
{
    /// <summary>Of one supply; two stand side by side.</summary>
    private const int Side = 38;

    private const int Trunk = 4;

    public static ImmutableArray<string> Of(Schedule schedule)
    {
        var (normal, standby) = (Normal(schedule), Standby(schedule));
        var rows = Math.Max(normal.Length, standby.Length);
        return
        [
            .. Enumerable.Range(0, rows).Select(row => Pair(Row(normal, row), Row(standby, row))),
            $"{new string(' ', Trunk)}+----------------+--------------------+",
            .. Below(SupplyWords.Transfer(schedule.Transfer), "transfer: "),
            .. Below(SupplyWords.Feeder(schedule.Feeder), ""),
            .. Panel(schedule),
            .. Circuits(schedule),
            "",
            .. Wrapped.Of($"Bonds on standby: {SupplyWords.OnStandby(schedule)}", 2 * Side),
        ];
    }

    private static string[] Normal(Schedule schedule) =>
    [
        "NORMAL SUPPLY",
        PanelWords.Or(schedule.Panel.FedFrom, "not stated"),
        .. Device("feeder device", schedule.Feeder?.Ocpd),
    ];

    private static string[] Standby(Schedule schedule) => schedule.Source is not { } source
        ? ["STANDBY SOURCE", "none stated"]
        :
        [
            "STANDBY SOURCE",
            .. SupplyWords.Source(source),
            .. Device("source's breaker", source.Ocpd),
            .. source.Outlet is { } outlet ? [$"(o) NEMA {outlet}, {SupplyWords.Cord(source)}"] : Array.Empty<string>(),
        ];

    private static string[] Device(string called, Amperes? rating) => ["|", $"[x] {called} {PanelWords.Stated(rating)}"];

    /// <summary>The shorter side goes on as a line down to the transfer equipment.</summary>
    private static string Row(string[] side, int row) => row < side.Length ? side[row] : "|";

    private static string Pair(string normal, string standby) =>
        $"{new string(' ', Trunk)}{DisplayText.Fit(normal, Side - 1)}{DisplayText.Clean(standby)}".TrimEnd();

    private static IEnumerable<string> Below(IEnumerable<string> lines, string called) =>
        lines.Select((line, at) => $"{new string(' ', Trunk + 17)}|  {(at == 0 ? called : "")}{line}");

    private static IEnumerable<string> Panel(Schedule schedule)
    {
        var panel = schedule.Panel;
        yield return DisplayText.Clean($"{new string(' ', Trunk + 17)}|  {PanelWords.NameOf(panel)}, {panel.System}, {panel.Spaces} spaces");
        yield return $"{new string(' ', Trunk + 17)}|  bus {PanelWords.Stated(panel.Bus)}; main {panel.Main?.ToString() ?? "not stated"}";
    }

    private static IEnumerable<string> Circuits(Schedule schedule) => schedule.Circuits.OrderBy(circuit => circuit.Space).Select(circuit =>
        DisplayText.Clean($"{new string(' ', Trunk + 17)}+--[x] {circuit.Space,-4} {PanelWords.Of(circuit.Breaker),-12} {PanelWords.Purpose(circuit)}"));
}
