using System.Collections.Immutable;

namespace PanelTui.Pages;

/// <summary>How to do what people come for, in the order in which they come for it; the keys are those of the commands.</summary>
internal static class Guide
{
    /// <summary>What the guide says that is done with a key.</summary>
    public static IEnumerable<string> Of(string key) =>
        Tasks.Where(task => task.How.Contains($"`{key}`", StringComparison.Ordinal)).Select(task => $"{task.Task} {task.How}");

    public static readonly ImmutableArray<(string Task, string How)> Tasks =
    [
        ("Hang a breaker", "Go to an open space; `1`, `2` or `3` for its poles, `t` for half a tandem. Type name, rating and load; Enter goes on."),
        ("Move or swap", "`Space` takes the breaker; the arrows carry it, and the figures show what the drop would do. `Enter` drops it; a breaker "
            + "in the way changes places with it."),
        ("Copy a breaker", "`c` on it, then `p` on each open space."),
        ("Change a breaker", "`Enter` on it; `l` for its loads as a table."),
        ("Change many at once", "`T`: all breakers as a table. Type into a cell, mark rows and set a column for all of them, sort, narrow down, or paste the rows of a spreadsheet."),
        ("Change anything else", "`a`, then the letter of a section: panel, feeder, transfer equipment, source, scenarios."),
        ("Ask why", "`y`, then the arrows, or click a figure. Each step has its value and section."),
        ("See what is wrong", "`f` goes to the next finding, `F` lists all with what to do."),
        ("Balance the legs", "`b` lists the fewest moves to the best balance; Enter shows a plan before it is taken."),
        ("Try it on standby", "`x`: switch circuits off and on, see each leg against its limits, what can start, one unit alone, and the hours."),
        ("See what changed", "`v`: since the last save, and since the last commit in git."),
        ("Print", "`P` looks at the door directory, labels, signs, load sheet, diagram and parts; `paneltui print` writes them."),
        ("Take back", "`u` takes back, `r` does it again, as far as you like."),
        ("Find a thing", "`/` finds a circuit, `:` any command by a part of its name."),
        ("Save and leave", "`^S` saves, `w` saves under another name, `q` leaves. What is not saved is kept should the line drop."),
    ];
}
