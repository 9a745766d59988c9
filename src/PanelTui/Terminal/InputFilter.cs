namespace PanelTui.Terminal;
internal sealed class InputFilter { private string _held = ""; public string Feed(string c) { _held = ""; return _held + c; } public TimeSpan? Patience => _held.Length == 0 ? null : TimeSpan.Zero; public string Expire() => _held; }
