namespace PanelTui.Tests.Terminal;

/// <summary>The program as a user starts it, with its own start and its own runtime settings; PANELTUI_EXE names the native build.</summary>
internal static class RealProgram
{
    /// <summary>The native build that is to be tried; null where the managed one is.</summary>
    public static string? Native => Environment.GetEnvironmentVariable("PANELTUI_EXE") is { Length: > 0 } given ? given : null;

    public static string Path => Native ?? System.IO.Path.Combine(AppContext.BaseDirectory, "paneltui");
}
