using System.Runtime.CompilerServices;
using Terminal.Gui.App;

namespace PanelTui.Terminal;

/// <summary>Lets the library load without listening to files and programs that happen to lie around.</summary>
/// <remarks>
/// Terminal.Gui reads .tui/config.json in the home and in the current directory, and the variable TUI_CONFIG, when it
/// is loaded; and runs a program named bash, which may be one in the current directory, to look for a clipboard.
/// A schedule comes out of someone's repository: nothing in it may change how this program looks or what it runs.
/// </remarks>
internal static class LibraryStart
{
    private const string ConfigurationVariable = "TUI_CONFIG";
    private const string HomeVariable = "HOME";
    private const string Nowhere = "/dev/null";

    /// <summary>Loads the library; call before any of its types is touched. The native build has no such files to read.</summary>
    public static void Load()
    {
        LookLikeAPipe();
        var here = Libc.Open(".", 0);
        var home = Environment.GetEnvironmentVariable(HomeVariable);
        var configuration = Environment.GetEnvironmentVariable(ConfigurationVariable);
        Environment.SetEnvironmentVariable(HomeVariable, Nowhere);
        Environment.SetEnvironmentVariable(ConfigurationVariable, null);
        Environment.CurrentDirectory = "/";
        try
        {
            RuntimeHelpers.RunModuleConstructor(typeof(IApplication).Module.ModuleHandle);
        }
        finally
        {
            _ = Libc.GoTo(here);
            _ = Libc.Close(here);
            Environment.SetEnvironmentVariable(HomeVariable, home);
            Environment.SetEnvironmentVariable(ConfigurationVariable, configuration);
        }
    }

    /// <summary>The library looks for clipboard programs unless the input is redirected; .NET asks once and remembers.</summary>
    private static void LookLikeAPipe()
    {
        var keyboard = Libc.Duplicate(0);
        var nothing = Libc.Open(Nowhere, 0);
        _ = Libc.DuplicateTo(nothing, 0);
        _ = Console.IsInputRedirected;
        _ = Libc.DuplicateTo(keyboard, 0);
        _ = Libc.Close(nothing);
        _ = Libc.Close(keyboard);
    }
}
