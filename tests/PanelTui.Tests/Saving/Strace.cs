namespace PanelTui.Tests.Saving;

/// <summary>The switch of the tests that make a system call fail, or read the calls of a save, with strace.</summary>
internal static class Strace
{
    /// <summary>
    /// Skips the test without PANELTUI_STRACE=1. With it, a test fails where strace is missing or is not allowed.
    /// </summary>
    public static void IsWanted() => Assert.SkipUnless(
        Environment.GetEnvironmentVariable("PANELTUI_STRACE") == "1", "PANELTUI_STRACE=1 has strace make the calls of a save fail");
}
