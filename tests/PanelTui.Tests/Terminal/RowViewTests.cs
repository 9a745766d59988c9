using PanelTui.Terminal;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace PanelTui.Tests.Terminal;

public sealed class RowViewTests : IDisposable
{
    private readonly Rows _rows = new() { Width = Dim.Fill(), Height = Dim.Fill() };

    [Fact]
    public void At_first_every_row_is_painted()
    {
        using var program = Open();
        _rows.Painted.Distinct().ShouldBe(Enumerable.Range(0, 24), ignoreOrder: true);
    }

    [Fact]
    public void Only_the_row_that_was_touched_is_painted_again()
    {
        using var program = Open();
        _rows.Painted.Clear();
        program.Do(_ => _rows.TouchRow(7));
        _rows.Painted.Distinct().ShouldBe([7]);
    }

    [Fact]
    public void A_row_out_of_view_is_no_matter()
    {
        using var program = Open();
        _rows.Painted.Clear();
        program.Do(_ => _rows.TouchRow(24)).Do(_ => _rows.TouchRow(-1));
        _rows.Painted.ShouldBeEmpty();
    }

    [Fact]
    public void A_closing_dialog_leaves_no_hole()
    {
        using var program = Open();
        program.Do(app => app.Invoke(() => MessageBox.Query(app, "Sure?", "Really?", "Yes")));
        program.Press(global::Terminal.Gui.Input.Key.Esc).Row(12).ShouldBe("row 12");
    }

    public void Dispose() => _rows.Dispose();

    private Driven Open() => new(_ => Window());

    private Runnable Window()
    {
        var window = new Runnable();
        window.Add(_rows);
        return window;
    }

    private sealed class Rows : RowView
    {
        public List<int> Painted { get; } = [];

        protected override void PaintRow(int row, int width)
        {
            Painted.Add(row);
            AddStr(PanelTui.Presentation.DisplayText.Fit($"row {row}", width));
        }
    }
}
