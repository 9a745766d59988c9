using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of `panel`.</summary>
internal static class PanelFields
{
    public static readonly ValueField<string> Name = new("panel.name", Forms.Text, "Packing shed standby",
        "What the panel is called, as its label reads");

    public static readonly ValueField<string> Location = new("panel.location", Forms.Text, "East wall by the cold room",
        "Where it hangs");

    public static readonly ValueField<string> FedFrom = new("panel.fed_from", Forms.Text, "Service panel, space 14",
        "What feeds it on the normal supply, and where that is");

    public static readonly ValueField<string> Revision = new("panel.revision", Forms.Text, "C",
        "The revision of this schedule, as its directory on the door reads");

    public static readonly ValueField<DateOnly> Revised = new("panel.revised", new DateForm(), "2026-11-25",
        "When this schedule was last revised");

    public static readonly ValueField<string> VerifiedBy = new("panel.verified_by", Forms.Text, "Keeper of the shed",
        "Who checked the circuits at the panel");

    public static readonly ValueField<PanelSystem> System = new("panel.system", Choices.System, "120/240 V 1ph 3W",
        "Its supply: voltages, phases and wires") { IsRequired = true };

    public static readonly ValueField<int> Spaces = new("panel.spaces", new WholeNumberForm(1, SpaceNumber.Most), "20",
        "How many breaker spaces it has, numbered odd on the left and even on the right") { IsRequired = true };

    public static readonly ValueField<Amperes> Bus = new("panel.bus", Forms.Current, "125 A",
        "The rating of its bus");

    public static readonly ValueField<MainDevice> Main = new("panel.main", new MainForm(), "60 A",
        "The main breaker's rating, or lugs where there is none");

    public static readonly ListField<int> TandemSpaces = new(
        "panel.tandem_spaces", new WholeNumberForm(1, SpaceNumber.Most),
        "[17, 18, 19, 20]", "The spaces where its listing allows tandem breakers, whose halves are 17a and 17b")
    {
        Default = "none",
    };

    public static readonly ValueField<Amperes> FaultCurrent = new("panel.fault_current", Forms.FaultCurrent, "2.5 kA",
        "The fault current available at the panel");

    public static readonly ValueField<Amperes> Interrupting = new("panel.interrupting", Forms.FaultCurrent, "10 kA",
        "The lowest interrupting rating of its breakers");

    public static readonly ValueField<Celsius> Terminals = new("panel.terminals", Forms.Temperature, "75 C",
        "The temperature its terminals are marked for");

    public static readonly ValueField<bool> NeutralBonded = new("panel.neutral_bonded", Forms.YesNo, "no",
        "Whether neutral and ground are bonded in it, which has its place at the service only");

    public static readonly ImmutableArray<Field> All =
    [
        Name, Location, FedFrom, Revision, Revised, VerifiedBy, System, Spaces, Bus, Main, TandemSpaces,
        FaultCurrent, Interrupting, Terminals, NeutralBonded,
    ];
}
