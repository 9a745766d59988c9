using CsCheck;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Text;

public class TextChangeTests
{
    private static readonly Gen<string> Texts = Gen.Char["ab \nü\uD83D\uDE00"].Array[0, 40].Select(chars => new string(chars));

    private static readonly Gen<(string Text, TextChange Change)> Changes =
        from text in Texts
        from steps in Gen.Select(Gen.Double.Unit, Gen.Double.Unit, Texts).Array[0, 6]
        select (text, ChangeOf(text, steps));

    [Fact]
    public void Undoing_a_change_restores_the_text_to_the_last_character() =>
        Changes.Sample(x => x.Change.Inverse(x.Text).ApplyTo(x.Change.ApplyTo(x.Text)) == x.Text);

    [Fact]
    public void Two_changes_joined_do_what_they_do_one_after_the_other() =>
        Gen.Select(Changes, Gen.Select(Gen.Double.Unit, Gen.Double.Unit, Texts).Array[0, 6]).Sample((first, steps) =>
        {
            var between = first.Change.ApplyTo(first.Text);
            var second = ChangeOf(between, steps);
            return first.Change.Then(second).ApplyTo(first.Text) == second.ApplyTo(between);
        });

    [Fact]
    public void The_change_between_two_texts_leads_from_one_to_the_other() =>
        Gen.Select(Texts, Texts).Sample((before, after) => TextChange.Between("", before, after).ApplyTo(before) == after);

    [Fact]
    public void The_change_between_equal_texts_is_empty() =>
        Texts.Sample(text => TextChange.Between("", text, text).IsEmpty);

    [Fact]
    public void Disjoint_edits_count_in_the_same_text_in_whatever_order_they_are_given() =>
        TextChange.OfDisjoint("", [TextEdit.Insert(6, "!"), new(new(0, 3), "Ct"), TextEdit.Insert(3, "-")]).ApplyTo("abcdef").ShouldBe("Ct-def!");

    [Fact]
    public void Text_inserted_where_another_stretch_goes_stays() =>
        TextChange.OfDisjoint("", [TextEdit.Remove(new(1, 2)), TextEdit.Insert(1, "x"), TextEdit.Insert(1, "y")]).ApplyTo("abcd").ShouldBe("axyd");

    private static TextChange ChangeOf(string text, (double Start, double Length, string New)[] steps)
    {
        var edits = new List<TextEdit>();
        foreach (var (start, length, inserted) in steps)
        {
            var from = (int)(start * text.Length);
            edits.Add(new(new(from, (int)(length * (text.Length - from))), inserted));
            text = edits[^1].ApplyTo(text);
        }

        return new("change", [.. edits]);
    }
}
