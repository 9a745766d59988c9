namespace PanelTui.Engine.Panels;

/// <summary>One value for each leg that a system has: one, two or three.</summary>
public readonly record struct PerLeg<T>
{
    private readonly T _a;
    private readonly T _b;
    private readonly T _c;

    internal PerLeg(int count, Func<Leg, T> value)
    {
        Count = count;
        _a = value(Leg.A);
        _b = count > 1 ? value(Leg.B) : default!;
        _c = count > 2 ? value(Leg.C) : default!;
    }

    /// <summary>How many legs there are, 1 to 3.</summary>
    public int Count { get; }

    public T this[Leg leg] => (int)leg >= Count
        ? throw new ArgumentOutOfRangeException(nameof(leg), leg, "The system has no such leg.")
        : leg switch { Leg.A => _a, Leg.B => _b, Leg.C => _c, _ => throw Unnamed.Of(leg) };

    public IEnumerable<Leg> Legs => Enumerable.Range(0, Count).Select(index => (Leg)index);

    public IEnumerable<T> Values
    {
        get
        {
            var legs = this;
            return Legs.Select(leg => legs[leg]);
        }
    }

    public PerLeg<TOther> Select<TOther>(Func<T, TOther> map)
    {
        var legs = this;
        return new PerLeg<TOther>(Count, leg => map(legs[leg]));
    }
}

/// <summary>Makes a value for each leg of a system.</summary>
public static class PerLeg
{
    public static PerLeg<T> Of<T>(PanelSystem system, Func<Leg, T> value) => new(system.Legs.Length, value);
}
