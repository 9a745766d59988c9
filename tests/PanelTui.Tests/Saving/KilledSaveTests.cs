using System.Diagnostics;
using System.Globalization;
using PanelTui.Documents.Files;
using PanelTui.Tests.Terminal;

namespace PanelTui.Tests.Saving;

/// <summary>kill -9 at any moment of a save. PANELTUI_KILLS=n kills n times.</summary>
public sealed class KilledSaveTests : TerminalTests
{
    private static readonly int Kills = int.TryParse(Environment.GetEnvironmentVariable("PANELTUI_KILLS"), out var kills) ? kills : 6;

    [Fact]
    public void A_killed_save_leaves_the_whole_old_version_or_the_whole_new_one()
    {
        var file = Path.Combine(Folder, "shed.yaml");
        var left = 0;
        for (var kill = 0; kill < Kills; kill++)
        {
            File.WriteAllText(file, SaveLoop.Version(0));
            KillWhileSaving(file, kill * 7 % 41);
            SaveLoop.IsWhole(File.ReadAllText(file)).ShouldBeTrue($"torn by kill {kill}");
            left += Directory.GetFiles(Folder, ".shed.yaml.*.tmp").Length;
            Sweep(file);
        }

        TestContext.Current.SendDiagnosticMessage("{0} kills, {1} temporary files left and swept", Kills, left);
    }

    private static void KillWhileSaving(string file, int milliseconds)
    {
        var start = new ProcessStartInfo(Tests, [SaveLoop.Argument, file, int.MaxValue.ToString(CultureInfo.InvariantCulture)])
        {
            RedirectStandardOutput = true,
        };
        using var program = Process.Start(start)!;
        program.StandardOutput.ReadLine().ShouldBe("1");
        program.WaitForExit(milliseconds).ShouldBeFalse();
        program.Kill();
        program.WaitForExit();
    }

    /// <summary>The next start of the editor, a while later.</summary>
    private void Sweep(string file)
    {
        foreach (var left in Directory.GetFiles(Folder, ".shed.yaml.*.tmp")) File.SetLastWriteTimeUtc(left, DateTime.UnixEpoch);
        ScheduleFile.Sweep(file, TimeProvider.System);
        Directory.GetFiles(Folder).ShouldBe([file]);
    }
}
