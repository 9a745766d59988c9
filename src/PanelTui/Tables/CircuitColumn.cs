using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.Tables;

/// <summary>A column of the table of breakers: what stands in it, and how a value is written from it into the file.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Columns">How wide it is.</param>
/// <param name="Text">What it shows of a circuit.</param>
internal sealed record CircuitColumn(string Title, int Columns, Func<CircuitRow, string> Text)
{
    /// <summary>The key of the loads, which are written as one line.</summary>
    public const string Loads = "loads";

    /// <summary>The kind of a circuit's one load.</summary>
    public const string Kind = "kind";

    /// <summary>What it is sorted by where that is a number; nothing is sorted last.</summary>
    public Func<CircuitRow, decimal?>? Number { get; init; }

    /// <summary>Whether its values stand at its right edge, digit under digit.</summary>
    public bool IsRight { get; init; }

    /// <summary>Whether it tells how bad the findings of the row are.</summary>
    public bool IsFindings { get; init; }

    /// <summary>The key of a circuit that it shows; nothing where its figures follow from others.</summary>
    public string? Key { get; init; }

    /// <summary>What is known of the values that may stand in it; nothing where none is written.</summary>
    public Field? Field => Key switch
    {
        null => null,
        Kind => FieldBook.Find("circuits[].loads[].kind"),
        _ => FieldBook.Find($"circuits[].{Key}"),
    };

    /// <summary>The value as the file has it, to be edited or copied.</summary>
    public string Value(CircuitRow row) => Key switch
    {
        Loads or Kind => Text(row),
        { } key => row.Written(key),
        _ => Text(row),
    };

    /// <summary>Where its value stands; the loads as a whole have no place of their own.</summary>
    public YamlPath PathOf(int circuit) => Key == Kind ? Places.Load(circuit, 0).Then(Kind) : Places.Circuit(circuit).Then(Key!);

    /// <summary>Why nothing can be written from it on this circuit; nothing where it can.</summary>
    public string? WhyNot(CircuitRow row) => (Key, row.Circuit.Loads.Length) switch
    {
        (null, _) => $"{Title} follows from the other columns",
        (Kind, 0) => $"{CircuitText.NameOf(row.Circuit)} has no load yet: write it under Load",
        (Kind, > 1) => $"{CircuitText.NameOf(row.Circuit)} has {row.Circuit.Loads.Length} loads: write them under Load",
        _ => null,
    };

    /// <summary>Gives these circuits the value that was typed, as one step; no text clears it.</summary>
    public Intended Set(Snapshot snapshot, ImmutableArray<int> circuits, string text)
    {
        if (Key == Loads)
        {
            var loads = LoadPhrase.Parse(text);
            return circuits is [var one]
                ? SetLoads.In(snapshot, one, loads)
                : InOrder.Of(snapshot, TitleOf(circuits, text), circuits.Select(circuit => (Func<Snapshot, Intended>)(now => SetLoads.In(now, circuit, loads))));
        }

        return circuits is [var alone]
            ? SetField.In(snapshot, PathOf(alone), text)
            : SetField.In(snapshot, TitleOf(circuits, text), [.. circuits.Select(circuit => (PathOf(circuit), text))]);
    }

    private string TitleOf(ImmutableArray<int> circuits, string text)
    {
        var what = Title.ToLowerInvariant();
        return text.Trim().Length == 0
            ? $"Clear {what} of {circuits.Length} breakers"
            : $"Set {what} of {circuits.Length} breakers to {Field!.Written(text)}";
    }
}
