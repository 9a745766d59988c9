using PanelTui.Presentation;
using PanelTui.Terminal;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace PanelTui.Tests.Terminal;

/// <summary>A small window to try the terminal with: it writes down what is typed, pasted and clicked.</summary>
internal sealed class Notebook : Runnable
{
    private readonly Page _page = new() { Width = Dim.Fill(), Height = Dim.Fill() };

    public Notebook() => Add(_page);

    /// <summary>What was typed and pasted.</summary>
    public string Written => _page.Written;

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Q.WithCtrl)
            RequestStop();
        else if (key == Key.F2)
            MessageBox.Query(App!, "Sure?", "Really?", "Yes", "No");
        else if (key == Key.F3)
            App!.AddTimeout(TimeSpan.FromSeconds(5), () => Say("five seconds later"));
        else if (key == Key.F4)
            _ = Task.Run(() => App!.Invoke(() => Say("found")), CancellationToken.None);
        else if (key == Key.L.WithCtrl)
            TerminalHost.Repaint(App!);
        else if (key == Key.F11)
            App!.AddTimeout(TimeSpan.FromMilliseconds(1), _page.Fill);
        else if (key == Key.F8)
            new Thread(() => throw new InvalidOperationException("a fault in the background")).Start();
        else if (key == Key.F7)
            App!.Clipboard!.TrySetClipboardData("copied");
        else if (key == Key.F9)
            throw new InvalidOperationException("a fault");
        else
            return false;
        return true;
    }

    private bool Say(string line)
    {
        _page.Say(line);
        return false;
    }

    private sealed class Page : RowView
    {
        private string _line = "";
        private char _ground = ' ';

        public Page()
        {
            CanFocus = true;
            KeyBindings.Remove(Key.Space); // which the library takes for a click
            AddCommand(Command.Activate, context =>
            {
                if (context?.Binding is MouseBinding { MouseEvent.Position: { } at })
                    Say($"{at.X},{at.Y}");
                return true;
            });
            MouseBindings.ReplaceCommands(MouseFlags.LeftButtonReleased, Command.Activate);
        }

        public string Written { get; private set; } = "";

        public void Say(string line)
        {
            _line = line;
            TouchRow(0);
        }

        /// <summary>Paints every cell anew, with another letter each time.</summary>
        /// <returns>True: again, and again.</returns>
        public bool Fill()
        {
            _ground = _ground == '#' ? '.' : '#';
            SetNeedsDraw();
            return true;
        }

        protected override bool OnKeyDownNotHandled(Key key)
        {
            if (key.AsRune.Value < ' ' || key.IsCtrl || key.IsAlt)
                return false;
            Written += key.AsRune;
            TouchRow(1);
            return true;
        }

        protected override void PaintRow(int row, int width)
        {
            SetAttributeForRole(VisualRole.Normal);
            var text = row == 0 ? _line : row == 1 ? Written : row == Viewport.Height - 1 ? "bottom" : new string(_ground, width);
            AddStr(DisplayText.Fit(text, width));
        }
    }
}
