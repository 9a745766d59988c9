namespace PanelTui;

/// <summary>The program `paneltui`.</summary>
internal static class Program
{
    private static int Main() => 0;
}
