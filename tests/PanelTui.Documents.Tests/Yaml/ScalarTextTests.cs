using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Yaml;

/// <summary>
/// YAML 1.2.2, section 10.3.2 (core schema), and the types of YAML 1.1 at yaml.org/type, which older readers follow.
/// </summary>
public class ScalarTextTests
{
    [Theory]
    [InlineData("", CoreType.Null)]
    [InlineData("~", CoreType.Null)]
    [InlineData("NULL", CoreType.Null)]
    [InlineData("nULL", CoreType.Text)]
    [InlineData("True", CoreType.Boolean)]
    [InlineData("tRUE", CoreType.Text)]
    [InlineData("no", CoreType.Text)]
    [InlineData("on", CoreType.Text)]
    [InlineData("N", CoreType.Text)]
    [InlineData("010", CoreType.WholeNumber)]
    [InlineData("+5", CoreType.WholeNumber)]
    [InlineData("-5", CoreType.WholeNumber)]
    [InlineData("-", CoreType.Text)]
    [InlineData("1_000", CoreType.Text)]
    [InlineData("12:30", CoreType.Text)]
    [InlineData("0x1F", CoreType.WholeNumber)]
    [InlineData("0b11", CoreType.Text)]
    [InlineData("0o10", CoreType.WholeNumber)]
    [InlineData("0o8", CoreType.Text)]
    [InlineData("0x", CoreType.Text)]
    [InlineData("12e3", CoreType.Number)]
    [InlineData("0.1", CoreType.Number)]
    [InlineData("1.", CoreType.Number)]
    [InlineData(".5", CoreType.Number)]
    [InlineData(".", CoreType.Text)]
    [InlineData("1e", CoreType.Text)]
    [InlineData("1e+5", CoreType.Number)]
    [InlineData("-.inf", CoreType.Number)]
    [InlineData(".nan", CoreType.Number)]
    [InlineData("20 A", CoreType.Text)]
    [InlineData("2026-11-25", CoreType.Text)]
    public void A_plain_scalar_is_what_yaml_1_2_says(string text, CoreType expected) => ScalarText.Resolve(text).ShouldBe(expected);

    [Theory]
    [InlineData("y")]
    [InlineData("N")]
    [InlineData("yes")]
    [InlineData("NO")]
    [InlineData("On")]
    [InlineData("off")]
    [InlineData("1_000")]
    [InlineData("12:30")]
    [InlineData("190:20:30")]
    [InlineData("010")]
    [InlineData("0b11")]
    [InlineData("+1_0.5")]
    [InlineData("1,000")]
    [InlineData("2026-11-25")]
    [InlineData("2026-11-25 10:00:00")]
    [InlineData("2026-11-25T10:00:00Z")]
    [InlineData("=")]
    [InlineData("<<")]
    public void A_text_that_an_older_reader_takes_for_something_else_is_a_trap(string text) => ScalarText.IsTrap(text).ShouldBeTrue();

    [Theory]
    [InlineData("20 A")]
    [InlineData("Spare")]
    [InlineData("none")]
    [InlineData("14-50R")]
    [InlineData("x1")]
    [InlineData("noon")]
    [InlineData("3/4\"")]
    [InlineData("6 AWG Cu")]
    public void An_ordinary_text_is_none(string text) => ScalarText.IsTrap(text).ShouldBeFalse();
}
