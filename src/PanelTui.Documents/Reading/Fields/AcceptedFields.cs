using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of an entry of `accepted`.</summary>
internal static class AcceptedFields
{
    public static readonly ValueField<string> Rule = new("accepted[].rule", new RuleNameForm(), "gfci-missing",
        "The rule whose finding is let stand, as check names it") { IsRequired = true };

    public static readonly ValueField<SpaceNumber> Space = new("accepted[].space", new SpaceForm(), "4",
        "A space that the finding is about, where not every finding of the rule is meant");

    public static readonly ValueField<string> Because = new("accepted[].because", Forms.Reason,
        "GFCI receptacles at both outlets", "Why it is let stand, for whoever reads it next") { IsRequired = true };

    public static readonly ImmutableArray<Field> All = [Rule, Space, Because];
}
