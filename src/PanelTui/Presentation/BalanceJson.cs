using System.Text.Json;
using PanelTui.Engine.Balance;

namespace PanelTui.Presentation;

/// <summary>A frontier as one JSON object; a circuit is its id, else its name, and a space is written as in the file.</summary>
internal static class BalanceJson
{
    /// <param name="written">True when the file now has the plan's spaces.</param>
    public static string Of(BalanceFrontier frontier, BalancePlan chosen, bool written) => JsonOutput.Balance.Of(json =>
    {
        json.WriteString("by", $"{frontier.By}");
        json.WriteFigure("now_percent", frontier.Now.Value);
        json.WriteBoolean("complete", frontier.IsComplete);
        json.WriteNumber("chosen_moves", chosen.Moves);
        json.WriteStartArray("frontier");
        foreach (var plan in frontier.Plans) Write(json, frontier, plan);
        json.WriteEndArray();
        json.WriteBoolean("written", written);
    });

    private static void Write(Utf8JsonWriter json, BalanceFrontier frontier, BalancePlan plan)
    {
        json.WriteStartObject();
        json.WriteNumber("moves", plan.Moves);
        json.WriteFigure("imbalance_percent", plan.Imbalance.Value);
        json.WriteFigure("bound_percent", plan.Bound.Value);
        json.WriteBoolean("proven", plan.IsProven);
        json.WriteStartArray("steps");
        foreach (var move in BalanceStep.Of(frontier.Schedule, plan.Hops).SelectMany(step => step.Moves))
        {
            json.WriteStartObject();
            json.WriteString("circuit", BalanceWords.Called(move.Circuit));
            json.WriteString("from", $"{move.From}");
            json.WriteString("to", $"{move.To}");
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
