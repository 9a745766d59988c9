using System.Reflection;
using System.Runtime.CompilerServices;

namespace PanelTui.Terminal;

/// <summary>Lets Terminal.Gui start without listening to files and programs that happen to lie around.</summary>
/// <remarks>
/// As soon as it is loaded it reads .tui/config.json in the home and in the current directory, and the variable
/// TUI_CONFIG; and later runs a program named bash, which may be one in the current directory, to look for a clipboard.
/// A schedule comes out of someone's repository: nothing in it may change how this program looks or what it runs.
/// The native build has no such files to read and no clipboard to look for: both are cut out
/// (TerminalGui.substitutions.xml).
/// </remarks>
internal static class LibraryStart
{
    private const string Library = "Terminal.Gui";
    private const string ConfigurationVariable = "TUI_CONFIG";
    private const string HomeVariable = "HOME";
    private const string Nowhere = "/dev/null";

    /// <summary>True in the managed build. Its host hands it the list of its assemblies; a native program has none.</summary>
    /// <remarks>RuntimeFeature.IsDynamicCodeSupported is no test: publishing natively sets it to false in either build.</remarks>
    public static bool IsManaged => AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") is not null;

    /// <summary>Waits for the library to be loaded, whoever is the first to touch it.</summary>
    [ModuleInitializer]
    internal static void Watch()
    {
        if (OperatingSystem.IsWindows() || !IsManaged)
            return;
        AppDomain.CurrentDomain.AssemblyLoad += (_, load) => StartUnseen(load.LoadedAssembly);
        foreach (var loaded in AppDomain.CurrentDomain.GetAssemblies())
            StartUnseen(loaded);
    }

    /// <summary>
    /// The library looks for clipboard programs unless the input is redirected; .NET asks once and remembers. So nothing
    /// may ask before this: the rest of the program asks the C library instead.
    /// </summary>
    /// <exception cref="InvalidOperationException">Somebody asked before: the library would look for them.</exception>
    public static void LookLikeAPipe()
    {
        var keyboard = Libc.Duplicate(0);
        Span<int> pipe = [-1, -1];
        if (keyboard >= 0 && Libc.Pipe(pipe) == 0)
            _ = Libc.DuplicateTo(pipe[0], 0);
#pragma warning disable RS0030 // Asked here so that it is answered here.
        var redirected = Console.IsInputRedirected;
#pragma warning restore RS0030
        if (keyboard >= 0)
            _ = Libc.DuplicateTo(keyboard, 0);
        foreach (var fd in (ReadOnlySpan<int>)[keyboard, pipe[0], pipe[1]])
            _ = Libc.Close(fd);
        if (!redirected)
            throw new InvalidOperationException("the console was asked for the keyboard too early");
    }

    /// <summary>Runs the library's start with no home, no variable, and in a directory of the system's own.</summary>
    private static void StartUnseen(Assembly assembly)
    {
        if (assembly.GetName().Name != Library)
            return;
        var here = Libc.Open(".", 0);
        var home = Environment.GetEnvironmentVariable(HomeVariable);
        var configuration = Environment.GetEnvironmentVariable(ConfigurationVariable);
        Environment.SetEnvironmentVariable(HomeVariable, Nowhere);
        Environment.SetEnvironmentVariable(ConfigurationVariable, null);
        if (here >= 0)
            Environment.CurrentDirectory = "/";
        try
        {
            RuntimeHelpers.RunModuleConstructor(assembly.ManifestModule.ModuleHandle);
        }
        finally
        {
            _ = Libc.GoTo(here);
            _ = Libc.Close(here);
            Environment.SetEnvironmentVariable(HomeVariable, home);
            Environment.SetEnvironmentVariable(ConfigurationVariable, configuration);
        }
    }
}
