using PanelTui.Engine.Balance;

namespace PanelTui.CommandLine;

/// <summary>What `paneltui balance` was asked for.</summary>
/// <param name="Scenario">The name after `--by scenario`.</param>
/// <param name="Basis">The word after `--by`.</param>
internal sealed record BalanceRequest(
    string? File, string? Scenario, string Basis, int? Moves, double Seconds, bool AsJson, bool Write)
{
    private const double LongestSeconds = 3600;

    /// <summary>One sentence where it cannot be done; nothing where it can.</summary>
    public string? WhyNot => this switch
    {
        { Basis: "scenario", Scenario: null } => "paneltui: --by scenario needs the scenario's name; put names with blanks in quotes.",
        { Basis: not ("connected" or "demand" or "worst" or "scenario") } =>
            $"paneltui: --by {Basis} is unknown; use connected, demand, worst or scenario NAME.",
        { File: null } => "paneltui: balance needs a FILE. See paneltui help balance.",
        { Seconds: not (> 0 and <= LongestSeconds) } => "paneltui: --seconds is above 0 and at most 3600.",
        { File: "-", Write: true } => "paneltui: --write needs a file; standard input cannot be written to.",
        _ => null,
    };

    public BalanceBy By => Basis switch
    {
        "demand" => BalanceBy.Demand,
        "worst" => BalanceBy.Worst,
        "scenario" => BalanceBy.Scenario(Scenario!),
        _ => BalanceBy.Connected,
    };
}
