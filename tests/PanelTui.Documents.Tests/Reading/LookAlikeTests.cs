using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>A character that only looks right is named by its script; a value with two readings is questioned.</summary>
public class LookAlikeTests
{
    private const string Text = """
        schedule: 1
        panel: {name: Shed, system: 120/240 V 1ph 3W, spaces: 8, bus: 100 A}
        circuits:
          - {space: 1, name: Lights, breaker: 15 A, loads: [{kind: lighting, rating: 480 W}]}

        """;

    [Theory]
    [InlineData("breaker: 15 A", "breaker: 15 А", "breaker is \"15 А\"; \"А\" is the Cyrillic letter A (U+0410), not the Latin A; write 15 A")]
    [InlineData("breaker: 15 A", "breaker: 15 Α", "\"Α\" is the Greek letter Alpha (U+0391), not the Latin A; write 15 A")]
    [InlineData("breaker: 15 A", "breaker: １５ A", "\"１\" is the full-width digit 1 (U+FF11), not the plain 1; write 15 A")]
    [InlineData("breaker: 15 A", "breaker: 15 Ａ", "\"Ａ\" is the full-width letter A (U+FF21), not the Latin A; write 15 A")]
    [InlineData("rating: 480 W", "rating: 480 kԜ", "\"Ԝ\" is the Cyrillic letter We (U+051C), not the Latin W; write 480 kW")]
    [InlineData("kind: lighting", "kind: lіghting", "\"і\" is the Cyrillic letter small Byelorussian-Ukrainian I (U+0456), not the Latin i; write lighting")]
    [InlineData("kind: lighting", "kind: light\u200bing", "there is a zero width space (U+200B) in it, which cannot be seen; write lighting")]
    [InlineData("480 W", "480 W, pf: ０.9", "\"０\" is the full-width digit 0 (U+FF10), not the plain 0; write 0.9")]
    public void A_look_alike_in_a_value_is_named_by_its_script(string right, string wrong, string said) => ErrorOf(right, wrong).ShouldContain(said);

    [Fact]
    public void A_look_alike_in_a_key_is_named_by_its_script() =>
        Snapshot.Of(SourceText.FromString(Text.Replace("breaker:", "brеaker:", StringComparison.Ordinal))).Diagnostics.Select(one => one.Message)
            .ShouldContain(message => message.EndsWith("; \"е\" is the Cyrillic letter small Ie (U+0435), not the Latin e; write breaker", StringComparison.Ordinal));

    [Theory]
    [InlineData("name: Lights", "name: Лампы")]
    [InlineData("breaker: 15 A", "breaker: 15\u00a0A")]
    public void A_name_may_be_in_any_script_and_a_no_break_space_is_a_space(string right, string other) =>
        Snapshot.Of(SourceText.FromString(Text.Replace(right, other, StringComparison.Ordinal))).Diagnostics.ShouldBeEmpty();

    [Theory]
    [InlineData("1.500 W", "1500 W", "1.5 W")]
    [InlineData("12.250 VA", "12250 VA", "12.25 VA")]
    [InlineData("1.256 A", "1256 A", "1.2560 A")]
    public void A_point_before_three_digits_may_group_thousands_so_both_readings_are_named(string value, string thousands, string decimals)
    {
        ErrorOf("480 W", value).ShouldBe($"rating is \"{value}\", which can be read as {thousands} or as {decimals}; write one of these");
        foreach (var reading in (string[])[thousands, decimals])
            Snapshot.Of(SourceText.FromString(Text.Replace("480 W", reading, StringComparison.Ordinal))).Diagnostics.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("0.125 A")]
    [InlineData("1.125 kW")]
    [InlineData("1.50 W")]
    [InlineData("1500.125 W")]
    public void A_number_with_one_reading_is_not_questioned(string value) =>
        Snapshot.Of(SourceText.FromString(Text.Replace("480 W", value, StringComparison.Ordinal))).Diagnostics.ShouldBeEmpty();

    [Theory]
    [InlineData("breaker: 15 A", "breaker: 15/20 A", "breaker is \"15/20 A\", which names two ratings; write one, and the two halves of a tandem as two circuits, such as spaces 17a and 17b")]
    [InlineData("rating: 480 W", "rating: 480 W, volts: 120/240 V", "volts is \"120/240 V\", which names two values; write the one that holds here")]
    [InlineData("breaker: 15 A", "breaker: 1/2 A", "breaker is \"1/2 A\", which is a fraction; write 0.5 A")]
    public void Two_ratings_with_a_slash_are_no_fraction(string right, string wrong, string said) => ErrorOf(right, wrong).ShouldBe(said);

    private static string ErrorOf(string right, string wrong)
    {
        Text.ShouldContain(right);
        return Snapshot.Of(SourceText.FromString(Text.Replace(right, wrong, StringComparison.Ordinal))).Diagnostics.Where(one => one.IsError).ShouldHaveSingleItem().Message;
    }
}
