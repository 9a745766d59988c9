using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Reading;

/// <summary>Reads an entry of `accepted`.</summary>
internal static class AcceptedReader
{
    public static Acceptance Read(MappingReader accepted, int ordinal)
    {
        var read = new Acceptance
        {
            Ordinal = ordinal,
            Rule = accepted.Required(AcceptedFields.Rule, ""),
            Space = accepted.Value(AcceptedFields.Space),
            Because = accepted.Required(AcceptedFields.Because, ""),
        };
        if (read.Rule.Length > 0 && RuleBook.Find(read.Rule) is null)
        {
            var hint = DidYouMean.Hint(read.Rule, AcceptedFields.Rule.Allowed);
            accepted.Diagnostics.Note(
                DiagnosticCodes.UnknownRule,
                accepted.SpanOf(AcceptedFields.Rule),
                $"rule names {Quoted.Of(read.Rule)}, which is no rule of this program{hint}");
        }

        return read;
    }
}
