using System.Text;
using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace PanelTui.Views;

/// <summary>A field in which a text that is longer than the field shows where it goes on: an ellipsis at the end that is cut.</summary>
internal sealed class MarkedTextField : TextField
{
    protected override bool OnDrawingContent(DrawContext? context)
    {
        var drawn = base.OnDrawingContent(context);
        if (ScrollOffset > 0) Mark(0);
        if (Text.Length - ScrollOffset > Viewport.Width) Mark(Viewport.Width - 1);
        return drawn;
    }

    private void Mark(int column)
    {
        SetAttributeForRole(HasFocus ? VisualRole.Focus : VisualRole.Normal);
        AddRune(column, 0, new Rune('…'));
    }
}
