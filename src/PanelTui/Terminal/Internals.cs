using System.Drawing;
using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;
using Terminal.Gui.ViewBase;

namespace PanelTui.Terminal;

/// <summary>The two internals of Terminal.Gui 2.5.0 that this program leans on; a test fails when an upgrade moves them.</summary>
internal static class Internals
{
    /// <summary>An application made of our own parts: its constructor takes a factory, and no public one does.</summary>
    public static IApplication NewApplication(IComponentFactory parts, ITimeProvider clock) =>
        (IApplication)Construct(parts, clock);

    /// <summary>The part of a view that asks to be painted, in the view's own columns and rows.</summary>
    [UnsafeAccessor(UnsafeAccessorKind.Method, Name = "get_NeedsDrawRect")]
    public static extern Rectangle NeedsDrawRect(View view);

    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object Construct(IComponentFactory parts, ITimeProvider clock);
}
