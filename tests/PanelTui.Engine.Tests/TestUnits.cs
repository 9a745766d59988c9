using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests;

/// <summary>Units that tests write beside numbers, and the program does not: `100.Ft`, `0.5m.VA`.</summary>
internal static class TestUnits
{
    extension(int value)
    {
        public Feet Ft => new(value);
    }

    extension(decimal value)
    {
        public VoltAmperes VA => new(value);

        public Watts W => new(value);

        public Percent Pct => new(value);
    }

    extension(Amperes)
    {
        /// <summary>The power of a current at a voltage.</summary>
        public static VoltAmperes operator *(Amperes current, Volts volts) => new(current.Value * volts.Value);
    }
}
