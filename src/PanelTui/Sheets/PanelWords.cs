using System.Globalization;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Sheets;

/// <summary>What several sheets say of a panel and its breakers.</summary>
internal static class PanelWords
{
    /// <summary>Room for a pen where the file says nothing.</summary>
    public const string ToFillIn = "____________________";

    public static string NameOf(Panel panel) => panel.Name.Length == 0 ? "Panel without a name" : panel.Name;

    public static string Date(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    /// <summary>`20 A 2P GFCI`.</summary>
    public static string Of(Breaker breaker) =>
        $"{breaker.Rating}{(breaker.Poles > 1 ? $" {breaker.Poles}P" : "")}{(breaker.Protection.Mark is { Length: > 0 } more ? $" {more}" : "")}";

    /// <summary>What a circuit is for, as its directory entry reads.</summary>
    public static string Purpose(Circuit circuit) => (circuit.Name, circuit.IsSpare) switch
    {
        ("", true) => "Spare",
        ("", _) => "(not named)",
        (var name, true) when !name.Contains("spare", StringComparison.OrdinalIgnoreCase) => $"{name} (spare)",
        (var name, _) => name,
    };

    /// <summary>`Generator, 7200 W in all`.</summary>
    public static string Of(StandbySource source)
    {
        var power = (source.Continuous, source.ContinuousPerLeg) switch
        {
            ({ } all, _) => $", {all} in all",
            (_, { } leg) => $", {leg} a leg",
            _ => "",
        };
        return source.Kind.Title + power;
    }

    public static string Or(string text, string otherwise) => text.Length == 0 ? otherwise : text;

    public static string Stated(Amperes? rating) => rating is { } known ? $"{known}" : "not stated";

    public static string Spaces(IEnumerable<SpaceNumber> spaces) => string.Join(", ", spaces);
}
