using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>A nameplate rating, in the quantity that stands on the plate.</summary>
public abstract record LoadRating
{
    private protected LoadRating()
    {
    }

    public sealed record InWatts(Watts Power) : LoadRating
    {
        public override string ToString() => $"{Power}";
    }

    public sealed record InVoltAmperes(VoltAmperes Power) : LoadRating
    {
        public override string ToString() => $"{Power}";
    }

    public sealed record InAmperes(Amperes Current) : LoadRating
    {
        public override string ToString() => $"{Current}";
    }

    public sealed record InHorsepower(Horsepower Output) : LoadRating
    {
        public override string ToString() => $"{Output}";
    }
}
