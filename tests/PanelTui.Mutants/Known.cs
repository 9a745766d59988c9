namespace PanelTui.Mutants;

/// <summary>Mutants that change nothing that anybody can observe, each with the reason: lines `change # reason`.</summary>
internal static class Known
{
    public static HashSet<string> Read(string path) =>
        [.. File.ReadAllLines(path).Where(line => line.Contains(" # ", StringComparison.Ordinal)).Select(line => line[..line.LastIndexOf(" # ", StringComparison.Ordinal)].Trim())];
}
