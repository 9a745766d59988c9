using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;

namespace PanelTui.Beginning;

/// <summary>The questions, in the order in which a person at the panel can answer them.</summary>
internal static class QuestionBook
{
    private const string Later = "Enter leaves it for later";

    public static readonly ImmutableArray<Question> All =
    [
        new("panel.name", "What is the panel called?") { Usual = "Standby panel", Hint = "as its label reads" },
        new("panel.location", "Where does it hang?") { Hint = Later },
        new("panel.system", "Which voltage system does it have?")
        {
            Usual = "120/240 V 1ph 3W",
            Hint = "the volts, phases and wires on its label; the generator or inverters come later",
            Choices =
            [
                ("120/240 V 1ph 3W", "two legs and a neutral, as in most houses"),
                ("120 V 1ph 2W", "one leg and a neutral"),
                ("120/208 V 1ph 3W", "two legs of a wye and its neutral"),
                ("208Y/120 V 3ph 4W", "three legs of a wye and its neutral"),
            ],
        },
        new("panel.spaces", "How many breaker spaces does it have?") { Called = "the number of spaces", Usual = "12", Hint = "the full-size ones, both sides together" },
        new("panel.bus", "What is its bus rated?") { Called = "the bus rating", Hint = $"from its label, e.g. 100 A; {Later}" },
        new("panel.main", "What is its main breaker rated?") { Called = "the main breaker", Hint = $"e.g. 60 A, or lugs where it has none; {Later}" },
        new("code.occupancy", "What is the building?")
        {
            Usual = "dwelling",
            Choices = [("dwelling", "people live there"), ("non-dwelling", "a shop, a barn, an office")],
        },
        new("code.edition", "Which edition of the NEC is in force there?")
        {
            Usual = "2023",
            Choices = [("2023", ""), ("2020", ""), ("2017", "")],
        },
        new("source.kind", "What feeds it when the utility does not?")
        {
            Usual = "generator",
            Choices = [("generator", ""), ("inverters", "on batteries"), (Question.NotYet, "not chosen")],
        },
        new("source.arrangement", "How do the inverters make the legs?")
        {
            Usual = "single",
            Choices =
            [
                ("single", "one unit makes every leg"),
                ("split", "two 120 V units, 180 degrees apart"),
                ("in-phase", "one 120 V unit on both legs"),
            ],
            IsAsked = answers => answers["source.kind"] == "inverters" && answers.System.Legs.Length > 1,
        },
        new("source.continuous", "What may it carry for hours, in all?")
        {
            Called = "what it may carry",
            Hint = $"running watts of its plate, e.g. 7.5 kW; {Later}",
            IsAsked = answers => answers["source.kind"] == "generator",
        },
        new("source.continuous_per_leg", "What may one leg carry for hours?")
        {
            Called = "what one leg may carry",
            Hint = $"e.g. 5 kW; {Later}",
            IsAsked = answers => answers["source.kind"] == "inverters",
        },
        new("source.neutral", "Is the source's neutral bonded to its frame?")
        {
            Usual = Question.NotKnown,
            Hint = "its plate or manual says so; it decides where neutral and ground meet, and how many times",
            Choices = [("floating", "not bonded"), ("bonded", "bonded to the frame"), (Question.NotKnown, "to be looked up")],
            IsAsked = HasSource,
        },
        new("source.ocpd", "What is the source's own breaker rated?") { Called = "the source's breaker", Hint = $"e.g. 30 A; {Later}", IsAsked = HasSource },
        new("source.outlet", "Which outlet does the cord go to?")
        {
            Hint = $"its NEMA configuration: {string.Join(", ", FieldBook.Find("source.outlet")!.Offered)}; {Later}",
            IsAsked = HasSource,
        },
        new("transfer.kind", "What switches between utility and source?")
        {
            Usual = "manual",
            Choices =
            [
                ("manual", "a transfer switch thrown by hand"),
                ("automatic", "a transfer switch that throws itself"),
                ("interlock", "a mechanical interlock of two breakers"),
                (Question.NotYet, "not chosen"),
            ],
        },
        new("transfer.rating", "What is it rated?")
        {
            Called = "the rating of the transfer equipment",
            Hint = $"e.g. 60 A; {Later}",
            IsAsked = HasTransfer,
        },
        new("transfer.switches_neutral", "Does it switch the neutral along with the legs?")
        {
            Usual = Question.NotKnown,
            Hint = "a switch with a pole for the neutral does; its manual or wiring diagram shows it",
            Choices = [("no", "the neutral goes through"), ("yes", "it has a pole for the neutral"), (Question.NotKnown, "to be looked up")],
            IsAsked = HasTransfer,
        },
        new("feeder.ocpd", "What protects the feeder to this panel on the utility side?") { Called = "the feeder's breaker", Hint = $"e.g. 60 A; {Later}" },
        new("circuits", "What is it to feed? Write the numbers, with blanks between")
        {
            Hint = $"breakers and loads are {UsualLoads.Remark}: read the nameplates. Enter leaves the panel empty",
            Choices = [.. UsualLoads.All.Select(load => (load.Name, $"{load.Breaker}{(load.Poles == 2 ? " two-pole" : "")}"))],
            TakesSeveral = true,
        },
    ];

    private static bool HasTransfer(Answers answers) => answers["transfer.kind"].Length > 0;

    private static bool HasSource(Answers answers) => answers["source.kind"].Length > 0;
}
