using PanelTui.Engine.Balance;

namespace PanelTui.CommandLine;

/// <summary>What `paneltui balance` was asked for.</summary>
/// <param name="Scenario">The name after `--by scenario`.</param>
/// <param name="Basis">The word after `--by`.</param>
/// <param name="Extra">A word too many after `--by`; null where there is none.</param>
internal sealed record BalanceRequest(
    string? File, string? Scenario, string Basis, string? Extra, int? Moves, double Seconds, bool AsJson, bool Write, bool IsDryRun)
{
    private const double LongestSeconds = 3600;

    /// <summary>One sentence where it cannot be done; null where it can.</summary>
    public string? WhyNot => this switch
    {
        { Basis: "scenario", Scenario: null } => "'--by scenario' needs the scenario's name; put names with blanks in quotes",
        { Basis: not ("connected" or "demand" or "worst" or "scenario") } =>
            $"'--by' does not take '{Basis}'; use connected, demand, worst or scenario NAME",
        { Extra: { } extra } => $"'{extra}' is one word too many after '--by {Basis}'",
        { File: null } => "'balance' needs FILE: a schedule; - for standard input",
        { Moves: < 0 } => "'--moves' is 0 or more",
        { Seconds: not (> 0 and <= LongestSeconds) } => "'--seconds' is above 0 and at most 3600",
        { File: "-", Write: true } => "'--write' needs a file; standard input cannot be written to",
        { IsDryRun: true, Write: false } => "'balance' writes only with '--write', so '--dry-run' goes with that",
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
