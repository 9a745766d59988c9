using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading;

/// <summary>Reads an entry of `circuits`.</summary>
internal static class CircuitReader
{
    public static Circuit Read(MappingReader circuit, int ordinal)
    {
        var breaker = Breaker(circuit);
        var read = new Circuit
        {
            Id = circuit.Object(CircuitFields.Id),
            Ordinal = ordinal,
            Space = circuit.Required(CircuitFields.Space, new SpaceNumber(1)),
            Name = circuit.Object(CircuitFields.Name) ?? "",
            Breaker = breaker,
            Wire = circuit.Object(CircuitFields.Wire),
            Length = circuit.Value(CircuitFields.Length),
            Loads = Loads(circuit, breaker.Poles),
            IsSpare = circuit.Value(CircuitFields.Spare) ?? false,
            Multiwire = circuit.Object(CircuitFields.Multiwire),
            Tied = circuit.Value(CircuitFields.Tied) ?? false,
            Fixed = circuit.Value(CircuitFields.Fixed) ?? false,
            Standby = circuit.Value(CircuitFields.Standby) ?? true,
            Priority = circuit.Value(CircuitFields.Priority),
            MovedFrom = circuit.Object(CircuitFields.MovedFrom),
            NeutralMoved = circuit.Value(CircuitFields.NeutralMoved),
            Verified = circuit.Value(CircuitFields.Verified),
            Places = Places(circuit),
        };
        NoteSpareWithLoads(circuit, read);
        return read;
    }

    private static Breaker Breaker(MappingReader circuit) => new(
        circuit.Required(CircuitFields.Breaker, Amperes.Zero),
        circuit.Value(CircuitFields.Poles) ?? 1,
        circuit.Value(CircuitFields.Protection) ?? Protection.Standard);

    private static ImmutableArray<Load> Loads(MappingReader circuit, int poles) =>
    [
        .. circuit.Sections(CircuitFields.Loads, "this load", Limits.LoadsOfOneCircuit)
            .Select(load => LoadReader.Read(load.Entry, poles)),
    ];

    private static ImmutableArray<string> Places(MappingReader circuit)
    {
        var places = circuit.List(CircuitFields.Places);
        foreach (var (place, node) in places.Where(place => !CircuitFields.Places.Allowed.Contains(place.Value)))
        {
            var hint = DidYouMean.Hint(place, CircuitFields.Places.Allowed);
            circuit.Diagnostics.Note(
                DiagnosticCodes.UnknownPlace, node.Span, $"places names {Quoted.Of(place)}, which no rule knows{hint}");
        }

        return [.. places.Select(place => place.Value).Distinct()];
    }

    private static void NoteSpareWithLoads(MappingReader circuit, Circuit read)
    {
        if (read is { IsSpare: true, Loads.IsEmpty: false })
        {
            circuit.Diagnostics.Note(
                DiagnosticCodes.SpareWithLoads,
                circuit.SpanOf(CircuitFields.Spare),
                "spare is yes, so the loads of this circuit are not counted");
        }
    }
}
