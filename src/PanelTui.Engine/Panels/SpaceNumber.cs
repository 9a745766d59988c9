using System.Globalization;

namespace PanelTui.Engine.Panels;

/// <summary>The upper or lower half of a space that holds a tandem breaker; most breakers take the whole space.</summary>
public enum SpaceHalf
{
    Whole,
    A,
    B,
}

/// <summary>A breaker space: 1 at the top left, odd numbers down the left, even down the right; `17a` is a tandem half.</summary>
public readonly record struct SpaceNumber : IComparable<SpaceNumber>
{
    /// <summary>The most spaces a schedule may have: three times the largest panelboard made in the trade's memory.</summary>
    public const int Most = 252;

    public SpaceNumber(int number, SpaceHalf half = SpaceHalf.Whole)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(number);
        Number = number;
        Half = half;
    }

    public int Number { get; }

    public SpaceHalf Half { get; }

    /// <summary>The row, counted from 0 at the top: spaces 1 and 2 share row 0, spaces 3 and 4 row 1.</summary>
    public int Row => (Number - 1) / 2;

    public bool IsLeft => Number % 2 == 1;

    public bool IsHalf => Half != SpaceHalf.Whole;

    public static bool operator <(SpaceNumber left, SpaceNumber right) => left.CompareTo(right) < 0;

    public static bool operator >(SpaceNumber left, SpaceNumber right) => left.CompareTo(right) > 0;

    public static bool operator <=(SpaceNumber left, SpaceNumber right) => left.CompareTo(right) <= 0;

    public static bool operator >=(SpaceNumber left, SpaceNumber right) => left.CompareTo(right) >= 0;

    /// <summary>The space so many rows further down on the same side; a half stays the same half.</summary>
    /// <remarks>Past the last number there is it stays there, so that no space a user writes can throw.</remarks>
    public SpaceNumber Below(int rows) => new((int)Math.Min(Number + (2L * rows), int.MaxValue), Half);

    /// <summary>Whether two breakers would meet here: the same number, and not the two different halves of it.</summary>
    public bool Overlaps(SpaceNumber other) =>
        Number == other.Number && (Half == other.Half || !IsHalf || !other.IsHalf);

    public SpaceNumber With(SpaceHalf half) => new(Number, half);

    public int CompareTo(SpaceNumber other) =>
        Number != other.Number ? Number.CompareTo(other.Number) : Half.CompareTo(other.Half);

    /// <summary>Reads `5`, `17a` or `17b`; nothing else.</summary>
    public static bool TryParse(string text, out SpaceNumber space)
    {
        space = default;
        var (digits, half) = text switch
        {
            [.. var before, 'a' or 'A'] => (before, SpaceHalf.A),
            [.. var before, 'b' or 'B'] => (before, SpaceHalf.B),
            _ => (text, SpaceHalf.Whole),
        };
        if (!int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1)
            return false;
        space = new SpaceNumber(number, half);
        return true;
    }

    public override string ToString() => Number.ToString(CultureInfo.InvariantCulture) + Half switch
    {
        SpaceHalf.A => "a",
        SpaceHalf.B => "b",
        SpaceHalf.Whole => "",
        _ => throw Unnamed.Of(Half),
    };
}
