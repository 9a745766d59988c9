using System.Collections.Immutable;
using System.Globalization;

namespace PanelTui.Engine.Quantities;

/// <summary>A motor's output rating in horsepower [hp]; its current comes from a table, not from 746 W.</summary>
public readonly record struct Horsepower(decimal Value)
{
    /// <summary>Less than any two nameplates differ by: a third is held with endless digits.</summary>
    private const decimal Slack = 0.000001m;

    /// <summary>Those of the rows of Tables 430.248 to 430.250.</summary>
    private static readonly ImmutableArray<(int Over, int Under)> Fractions = [(1, 6), (1, 4), (1, 3), (1, 2), (3, 4)];

    public static bool operator <=(Horsepower left, Horsepower right) => left.Value <= right.Value;

    public static bool operator >=(Horsepower left, Horsepower right) => left.Value >= right.Value;

    /// <summary>As a nameplate has it: `1/3 hp`, `7-1/2 hp`; what is no such fraction as a decimal.</summary>
    public override string ToString()
    {
        var whole = decimal.Truncate(Value);
        foreach (var (over, under) in Fractions)
        {
            if (Value > 0 && Math.Abs(Value - whole - ((decimal)over / under)) < Slack)
                return string.Create(CultureInfo.InvariantCulture, $"{(whole > 0 ? $"{whole:0}-" : "")}{over}/{under} hp");
        }

        return Shown.Plainly(Value, "hp");
    }
}
