using CsCheck;
using PanelTui.Presentation;
using Terminal.Gui.Text;

namespace PanelTui.Tests.Presentation;

public class DisplayTextTests
{
    [Theory]
    [InlineData("Sump pump, cellar", "Sump pump, cellar")]
    [InlineData("Küche 230 Ω", "Küche 230 Ω")]
    [InlineData("冷蔵庫", "冷蔵庫")]
    [InlineData("e\u0301te\u0301", "e\u0301te\u0301")]
    public void Text_a_reader_can_see_is_left_alone(string text, string shown) => DisplayText.Clean(text).ShouldBe(shown);

    [Theory]
    [InlineData("\e]52;c;cm0gLXJm\a", "⟨U+001B⟩]52;c;cm0gLXJm⟨U+0007⟩")]
    [InlineData("\u009b2J", "⟨U+009B⟩2J")]
    [InlineData("a\r\nb\tc", "a⟨U+000D⟩⟨U+000A⟩b⟨U+0009⟩c")]
    [InlineData("\u007f", "⟨U+007F⟩")]
    [InlineData("pay\u202eeman", "pay⟨U+202E⟩eman")]
    [InlineData("\u2066x\u2069", "⟨U+2066⟩x⟨U+2069⟩")]
    [InlineData("zero\u200bwidth", "zero⟨U+200B⟩width")]
    [InlineData("\ufeffmark", "⟨U+FEFF⟩mark")]
    [InlineData("soft\u00adhyphen", "soft⟨U+00AD⟩hyphen")]
    [InlineData("line\u2028line", "line⟨U+2028⟩line")]
    [InlineData("\ue000", "⟨U+E000⟩")]
    [InlineData("\u0378", "⟨U+0378⟩")]
    [InlineData("\u3164", "⟨U+3164⟩")]
    [InlineData("⚠\ufe0f", "⚠⟨U+FE0F⟩")]
    [InlineData("\u0301x", "⟨U+0301⟩x")]
    public void What_hides_or_moves_is_shown_by_its_number(string text, string shown) => DisplayText.Clean(text).ShouldBe(shown);

    [Fact]
    public void Half_of_a_surrogate_pair_is_shown_by_its_number() =>
        DisplayText.Clean("a\ud800b\udc00").ShouldBe("a⟨U+D800⟩b⟨U+DC00⟩");

    [Fact]
    public void A_tower_of_marks_is_taken_down() =>
        DisplayText.Clean("o" + new string('\u0308', 5)).ShouldBe("o" + string.Concat(Enumerable.Repeat("⟨U+0308⟩", 5)));

    [Fact]
    public void A_face_glued_together_of_several_is_taken_apart() =>
        DisplayText.Clean("👩\u200d🔧").ShouldBe("👩⟨U+200D⟩⟨U+1F527⟩");

    [Theory]
    [InlineData("Küche\u202e → 20 A", "Kuche<U+202E> > 20 A")]
    [InlineData("冷蔵庫", "??????")]
    [InlineData("┌─┐│", "+-+|")]
    public void A_plain_terminal_gets_plain_letters_column_for_column(string text, string shown) =>
        DisplayText.Clean(text, ascii: true).ShouldBe(shown);

    [Theory]
    [InlineData("pump", 4)]
    [InlineData("冷蔵庫", 6)]
    [InlineData("e\u0301", 1)]
    [InlineData("\u202e", 8)]
    public void Width_is_counted_in_columns(string text, int columns) => DisplayText.Width(text).ShouldBe(columns);

    [Theory]
    [InlineData("pump", 6, "pump  ")]
    [InlineData("pump", 4, "pump")]
    [InlineData("pump", 3, "pu…")]
    [InlineData("pump", 1, "…")]
    [InlineData("pump", 0, "")]
    [InlineData("冷蔵庫", 5, "冷蔵…")]
    [InlineData("冷蔵庫", 4, "冷… ")]
    [InlineData("e\u0301te\u0301", 2, "e\u0301…")]
    public void A_text_is_cut_or_filled_to_its_columns(string text, int columns, string shown) =>
        DisplayText.Fit(text, columns).ShouldBe(shown);

    [Fact]
    public void Text_of_any_kind_fills_exactly_the_columns_it_is_given() =>
        Gen.Select(Hostile, Gen.Int[0, 40]).Sample((text, columns) => DisplayText.Width(DisplayText.Fit(text, columns)) == columns);

    [Fact]
    public void Clean_text_of_any_kind_is_clean() =>
        Hostile.Sample(text => DisplayText.IsShowable(DisplayText.Clean(text)));

    [Fact]
    public void Clean_text_is_not_changed_again() =>
        Hostile.Sample(text => DisplayText.Clean(DisplayText.Clean(text)) == DisplayText.Clean(text));

    [Fact]
    public void A_plain_terminal_gets_nothing_but_ASCII() =>
        Hostile.Sample(text => DisplayText.Clean(text, ascii: true).All(letter => letter is >= ' ' and <= '~'));

    [Fact]
    public void Plain_letters_take_the_columns_of_what_they_stand_for() =>
        Hostile.Sample(text => DisplayText.Width(DisplayText.Clean(text, ascii: true)) == DisplayText.Width(text));

    [Fact]
    public void The_library_counts_the_same_columns() =>
        Hostile.Sample(text => DisplayText.Clean(text).GetColumns() == DisplayText.Width(text));

    private static readonly Gen<string> Hostile = Gen.OneOf(
            Gen.Char['\0', '\u00ff'],
            Gen.Char["\u0301\u0308\u20dd\u202e\u200d\u200b\ufe0f\u3164\ud83d\udc69\ud83c\udffb\udde9\ud800\u0600\u0915\u093e\u094d"],
            Gen.Char['\u1100', '\u11ff'],
            Gen.Char)
        .Array[0, 24].Select(letters => new string(letters));
}
