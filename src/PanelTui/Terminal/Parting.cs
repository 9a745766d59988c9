using System.Text;
using PanelTui.Presentation;

namespace PanelTui.Terminal;

/// <summary>The words printed on the terminal once it has been given back.</summary>
internal static class Parting
{
    public static void Say(Ending ending)
    {
        if (ending.Fault is { } fault)
            LastResort.Say(fault);
        if (ending.Note is { } note)
            Say(note);
    }

    /// <summary>Prints to standard error without the system's console, which would change the terminal's modes.</summary>
    public static void Say(string text)
    {
        var ascii = Surroundings.IsAscii(Environment.GetEnvironmentVariable);
        var lines = text.ReplaceLineEndings("\n").Split('\n').Select(line => $"{DisplayText.Clean(line, ascii)}\n");
        using var error = StandardFile.Error.Open();
        error.Write(Encoding.UTF8.GetBytes(string.Concat(lines)));
    }

    public static bool IsDebugging => Environment.GetEnvironmentVariable("PANELTUI_DEBUG") is { Length: > 0 };
}
