using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Writing;

public class EditsTests
{
    private const string Text = "circuits:\n  - space: 1 # lights\n  - space: 2\n";

    [Fact]
    public void Several_edits_become_one_step_of_undo()
    {
        var history = new History(Text);
        history.Make(Edits.InOrder(Trees.Of(Text), "swap", Move(0, "2"), Move(1, "1")));
        history.Text.ShouldBe("circuits:\n  - space: 2 # lights\n  - space: 1\n");
        history.UndoTitle.ShouldBe("swap");
        history.Undo();
        history.Text.ShouldBe(Text);
        history.UndoTitle.ShouldBeNull();
    }

    [Fact]
    public void A_later_edit_sees_what_an_earlier_one_did() =>
        Edited.By(Text, tree => Edits.InOrder(
            tree,
            "",
            t => YamlEditor.InsertEntry(t, Trees.Path("/"), "scenarios", new NewSequence([])),
            t => YamlEditor.InsertItem(t, Trees.Path("/scenarios"), 0, "night")))
            .ShouldEndWith("  - space: 2\nscenarios: [night]\n");

    [Fact]
    public void When_one_edit_cannot_be_made_none_is() =>
        Should.Throw<CannotEdit>(() => Edits.InOrder(Trees.Of(Text), "", Move(0, "2"), Move(7, "1")));

    private static Func<YamlTree, TextChange> Move(int circuit, string space) =>
        tree => YamlEditor.SetScalar(tree, YamlPath.Of("circuits", circuit, "space"), new(space, ScalarKind.Plain));
}
