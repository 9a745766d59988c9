using System.Runtime.CompilerServices;
using PanelTui.Terminal;

namespace PanelTui.Tests.Terminal;

/// <summary>Loads the library as the program does, before any test touches it: no file that lies around has a say.</summary>
internal static class LibraryLoad
{
    [ModuleInitializer]
#pragma warning disable CA2255 // Tests start in many places; this is the only one before all of them.
    internal static void Load()
#pragma warning restore CA2255
    {
        if (!OperatingSystem.IsWindows())
            LibraryStart.Load();
    }
}
