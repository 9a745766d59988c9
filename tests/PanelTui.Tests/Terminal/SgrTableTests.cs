using PanelTui.Terminal;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace PanelTui.Tests.Terminal;

public class SgrTableTests
{
    private static readonly Attribute Orange = new(new Color(255, 135, 0), Color.None);

    [Theory]
    [InlineData("None", "\e[m")]
    [InlineData("Sixteen", "\e[0;91m")]
    [InlineData("Cube", "\e[0;38;5;208m")]
    [InlineData("Full", "\e[0;38;2;255;135;0m")]
    public void A_colour_is_sent_as_the_terminal_can_show_it(string depth, string sequence) => Of(depth, Orange).ShouldBe(sequence);

    [Theory]
    [InlineData("Sixteen")]
    [InlineData("Cube")]
    [InlineData("Full")]
    public void A_colour_of_the_palette_is_left_to_the_users_own_theme(string depth) =>
        Of(depth, new Attribute(new Color(ColorName16.BrightRed), new Color(ColorName16.Blue))).ShouldBe("\e[0;91;44m");

    [Fact]
    public void Without_colour_bold_underline_and_reverse_remain() =>
        Of("None", new Attribute(ColorName16.Red, ColorName16.Black) with { Style = TextStyle.Bold | TextStyle.Underline | TextStyle.Reverse })
            .ShouldBe("\e[0;1;4;7m");

    [Theory]
    [InlineData(0, 0, 0, 16)]
    [InlineData(255, 255, 255, 231)]
    [InlineData(255, 0, 0, 196)]
    [InlineData(95, 135, 175, 67)]
    [InlineData(8, 8, 8, 232)]
    [InlineData(238, 238, 238, 255)]
    [InlineData(128, 128, 128, 244)]
    public void The_nearest_of_the_256_is_taken(int red, int green, int blue, int number) =>
        ColourCube.Nearest(red, green, blue).ShouldBe(number);

    private static string Of(string depth, Attribute attribute) => new SgrTable(Enum.Parse<ColourDepth>(depth)).For(attribute);
}
