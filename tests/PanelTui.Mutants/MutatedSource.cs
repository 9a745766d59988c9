using System.Text;

namespace PanelTui.Mutants;

/// <summary>A source with all its mutants in it, each behind a switch of its own.</summary>
internal static class MutatedSource
{
    /// <summary>Where one lies within another, both can be switched on, one at a time.</summary>
    public static string Of(string text, IReadOnlyCollection<(int Number, Mutation Mutation)> mutants) =>
        Written(text, 0, text.Length, [.. mutants.OrderBy(one => one.Mutation.Start).ThenByDescending(one => one.Mutation.Length)]);

    private static string Written(string text, int start, int end, List<(int Number, Mutation Mutation)> mutants)
    {
        var written = new StringBuilder();
        var at = start;
        while (mutants.Count > 0)
        {
            var (number, outer) = mutants[0];
            var stop = outer.Start + outer.Length;
            var within = mutants.Skip(1).TakeWhile(one => one.Mutation.Start < stop).ToList();
            mutants = [.. mutants.Skip(1 + within.Count)];
            written.Append(text, at, outer.Start - at);
            var original = Written(text, outer.Start, stop, within);
            written.Append(outer.IsStatement
                ? $"{{ if (!PanelTui.Mutants.Switch.IsOn({number})) {original} }}"
                : $"(PanelTui.Mutants.Switch.IsOn({number}) ? ({outer.Mutated}) : ({original}))");
            at = stop;
        }

        return written.Append(text, at, end - at).ToString();
    }

    /// <summary>What the mutated program asks; one mutant a process, and which switches it came by.</summary>
    public const string Switch = """
        namespace PanelTui.Mutants
        {
            public static class Switch
            {
                private static readonly int Chosen =
                    int.TryParse(System.Environment.GetEnvironmentVariable("PANELTUI_MUTANT"), out var number) ? number : -1;
                private static readonly string Trace = System.Environment.GetEnvironmentVariable("PANELTUI_MUTANT_TRACE");
                private static readonly bool[] Seen = new bool[100000];

                static Switch()
                {
                    if (Trace != null) System.AppDomain.CurrentDomain.ProcessExit += (_, _) => Write();
                }

                public static bool IsOn(int number)
                {
                    if (Trace != null) Seen[number] = true;
                    return number == Chosen;
                }

                private static void Write()
                {
                    var seen = new System.Text.StringBuilder();
                    for (var number = 0; number < Seen.Length; number++)
                        if (Seen[number]) seen.Append(number).Append('\n');
                    System.IO.File.WriteAllText(Trace, seen.ToString());
                }
            }
        }
        """;
}
