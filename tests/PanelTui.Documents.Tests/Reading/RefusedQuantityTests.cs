using PanelTui.Documents.Reading.Values;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>What is refused, and the whole sentence after the key that says how to write it.</summary>
public class RefusedQuantityTests
{
    [Theory]
    [InlineData("20", "is \"20\", a number without a unit; write it as on the handle, e.g. 20 A")]
    [InlineData("20 V", "is \"20 V\", a voltage; a current in A or kA is expected, e.g. 20 A")]
    [InlineData("20 amps", "is \"20 amps\"; write the unit as A: 20 A")]
    [InlineData("20 Q", "is \"20 Q\", and \"Q\" is no unit for a current; write A or kA, e.g. 20 A")]
    [InlineData("20 mA", "is \"20 mA\", a current in milliamperes; a current in A or kA is expected, e.g. 20 A")]
    [InlineData("big", "is \"big\", not a current; write it like 20 A")]
    [InlineData("", "is \"\", not a current; write it like 20 A")]
    [InlineData("0 A", "is \"0 A\"; it must be above 0")]
    [InlineData("-5 A", "is \"-5 A\"; it must be above 0")]
    [InlineData("7 kA", "is \"7 kA\"; the most that makes sense is 6000 A")]
    [InlineData("1/2 A", "is \"1/2 A\", which is a fraction; write 0.5 A")]
    [InlineData("2,5 A", "is \"2,5 A\", which has a decimal comma; write 2.5 A")]
    [InlineData("2,500 A", "is \"2,500 A\", which has a comma; write 2500 A, or 2.500 A")]
    [InlineData("2 500 A", "is \"2 500 A\", which has a thousands separator; write 2500 A")]
    [InlineData("2'500 A", "is \"2'500 A\", which has a thousands separator; write 2500 A")]
    [InlineData("1_000 A", "is \"1_000 A\", which has a thousands separator; write 1000 A")]
    [InlineData("+5 A", "is \"+5 A\", which is not a number that can be read; write it like 20 or 2.5")]
    [InlineData("5. A", "is \"5. A\", which is not a number that can be read; write it like 20 or 2.5")]
    [InlineData("2.500000000000000 A", "is \"2.500000000000000 A\", which has more digits than any nameplate")]
    [InlineData("99999999999999999999 A", "is \"99999999999999999999 A\", which has more digits than any nameplate")]
    [InlineData(
        "20 A\u001b[2J",
        "is \"20 A\\u{1B}[2J\", and \"A\\u{1B}[2J\" is no unit for a current; write A or kA, e.g. 20 A")]
    public void A_current_that_cannot_be_read_says_what_was_found_and_what_to_write(string text, string sentence) =>
        Forms.Handle.Read(text).Problem.ShouldBe(sentence);

    [Theory]
    [InlineData("1½ hp", "is \"1½ hp\", which has a fraction in one character; write 1 1/2 hp")]
    [InlineData("½ hp", "is \"½ hp\", which has a fraction in one character; write 1/2 hp")]
    [InlineData(
        "480",
        "is \"480\", a number without a unit; write it as on the nameplate, e.g. 480 W, 480 VA, 480 A or 480 hp")]
    public void A_rating_that_cannot_be_read_says_so(string text, string sentence) =>
        new RatingForm().Read(text).Problem.ShouldBe(sentence);

    [Theory]
    [InlineData("12000 BTU/h", "a cooling or heating capacity and no electrical rating")]
    [InlineData("1 mW", "a power in milliwatts")]
    [InlineData("1 MW", "a power in megawatts")]
    public void A_rating_in_another_quantity_names_both(string text, string quantity) =>
        new RatingForm().Read(text).Problem.ShouldBe(
            $"is \"{text}\", {quantity}; a nameplate rating in W, kW, VA, kVA, A or hp is expected, e.g. 480 W");

    [Theory]
    [InlineData("60'", "is \"60'\"; write the unit as ft: 60 ft")]
    [InlineData("60 feet", "is \"60 feet\"; write the unit as ft: 60 ft")]
    [InlineData("60 in", "is \"60 in\", a length in inches; a length in ft or m is expected, e.g. 60 ft")]
    public void A_length_that_cannot_be_read_says_so(string text, string sentence) =>
        Forms.Length.Read(text).Problem.ShouldBe(sentence);

    [Theory]
    [InlineData("75 °C", "is \"75 °C\"; write the unit as C: 75 C")]
    [InlineData("300 C", "is \"300 C\"; the most that makes sense is 250 C")]
    [InlineData("-100 C", "is \"-100 C\"; it must be -60 C or more")]
    public void A_temperature_that_cannot_be_read_says_so(string text, string sentence) =>
        Forms.Temperature.Read(text).Problem.ShouldBe(sentence);

    [Theory]
    [InlineData("6", "is \"6\", a number without a unit; write it with its unit, e.g. 6x or 6 A")]
    [InlineData("code O", "is \"code O\"; a code letter is one of A to V without I, O and Q, e.g. code G")]
    [InlineData("30x", "is \"30x\"; the most that makes sense is 20x")]
    public void A_start_that_cannot_be_read_says_so(string text, string sentence) =>
        new StartForm().Read(text).Problem.ShouldBe(sentence);

    [Theory]
    [InlineData("6", "is \"6\"; write size and metal, e.g. 6 AWG Cu, 1/0 AWG Al or 250 kcmil Cu")]
    [InlineData("6 AWG", "is \"6 AWG\"; it has no metal; write 6 AWG Cu or 6 AWG Al")]
    [InlineData("6 AWG Fe", "is \"6 AWG Fe\"; the metal is Cu, Al or CCA, e.g. 6 AWG Cu")]
    [InlineData(
        "7 AWG Cu", "is \"7 AWG Cu\"; AWG sizes are 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 1/0, 2/0, 3/0 and 4/0")]
    [InlineData(
        "0 AWG Cu", "is \"0 AWG Cu\"; AWG sizes are 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 1/0, 2/0, 3/0 and 4/0")]
    public void A_conductor_that_cannot_be_read_says_so(string text, string sentence) =>
        new ConductorForm().Read(text).Problem.ShouldBe(sentence);

    [Theory]
    [InlineData("NEMA 14-50R", "is \"NEMA 14-50R\"; write the configuration alone, 14-50")]
    [InlineData("50 A", "is \"50 A\"; write a NEMA configuration such as 14-50 or L14-30")]
    public void An_outlet_that_cannot_be_read_says_so(string text, string sentence) =>
        new OutletForm().Read(text).Problem.ShouldBe(sentence);
}
