namespace PanelTui.Engine.Quantities;

/// <summary>Lets a table read as it is printed: `20.A`, `3_000.VA`, `35.Pct`.</summary>
public static class UnitSuffixes
{
    extension(int value)
    {
        public Amperes A => new(value);

        public Volts V => new(value);

        public VoltAmperes VA => new(value);

        public Watts W => new(value);

        public Percent Pct => new(value);

        public Horsepower Hp => new(value);

        public Celsius DegC => new(value);
    }

    extension(decimal value)
    {
        public Amperes A => new(value);

        public Horsepower Hp => new(value);
    }
}
