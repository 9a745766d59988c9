using System.Diagnostics.CodeAnalysis;

namespace PanelTui.Documents.Reading.Values;

/// <summary>What came of reading one value: the value, or what is wrong with it.</summary>
/// <remarks>
/// A problem is the rest of a sentence whose subject is the key: `is "20", a number without a unit; …`.
/// </remarks>
internal readonly record struct Outcome<T>(T? Value, string? Problem)
    where T : notnull
{
    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool Succeeded => Problem is null;

    public Outcome<TOther> Then<TOther>(Func<T, TOther> map)
        where TOther : notnull =>
        Succeeded ? Outcome.Of(map(Value)) : Outcome.Refused<TOther>(Problem);
}

internal static class Outcome
{
    public static Outcome<T> Of<T>(T value)
        where T : notnull =>
        new(value, null);

    public static Outcome<T> Refused<T>(string problem)
        where T : notnull =>
        new(default, problem);
}
