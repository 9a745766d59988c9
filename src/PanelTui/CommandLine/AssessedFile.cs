using PanelTui.Engine;

namespace PanelTui.CommandLine;

/// <summary>A schedule that a verb works with, or what is wrong with it on the error stream.</summary>
internal static class AssessedFile
{
    /// <summary>Null for a file that is no schedule; why not has then been printed.</summary>
    public static Assessment? Read(string file, Streams streams)
    {
        var input = ScheduleInput.Read(file, streams);
        if (input.ProblemLine is { } problem) streams.Error.WriteLine(problem);
        if (input.Snapshot is not { } snapshot) return null;
        if (snapshot.Assessment is { } assessment) return assessment;
        foreach (var wrong in snapshot.Diagnostics.Where(wrong => wrong.IsError))
            streams.Error.WriteLine(CheckReport.Line(input.Name, snapshot, wrong));
        return null;
    }
}
