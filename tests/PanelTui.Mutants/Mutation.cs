namespace PanelTui.Mutants;

/// <summary>One small change of the meaning of a source: what stands there, and what would.</summary>
/// <param name="File">Relative to the folder of the project.</param>
/// <param name="Line">Counted from 1.</param>
internal sealed record Mutation(string File, int Line, int Start, int Length, string Original, string Mutated, bool IsStatement)
{
    /// <summary>Says which change it is however the lines above it move: what `equivalent.txt` goes by.</summary>
    public string Key => $"{File}: {Flat(Original)} -> {Flat(Mutated)}";

    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    public override string ToString() => $"{File}:{Line}: {Flat(Original)} -> {Flat(Mutated)}";
}
