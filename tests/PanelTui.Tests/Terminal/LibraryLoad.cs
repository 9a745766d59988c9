using System.Runtime.CompilerServices;
using PanelTui.Terminal;

namespace PanelTui.Tests.Terminal;

/// <summary>Starts the library as the program does, before any test touches it: no file that lies around has a say.</summary>
internal static class LibraryLoad
{
    [ModuleInitializer]
    internal static void Watch()
    {
        RuntimeHelpers.RunModuleConstructor(typeof(LibraryStart).Module.ModuleHandle);
        ThreadPool.SetMinThreads(64, 64); // a test waits on one thread of the pool while its program starts on another
    }
}
