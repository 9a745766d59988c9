namespace PanelTui.Engine.Codes;

/// <summary>Sections of the National Electrical Code, NFPA 70.</summary>
public static class Nec
{
    private const string Document = "NEC";

    /// <summary>A section that kept its number over all the editions there are here.</summary>
    public static CodeSection Section(string number) => Section((2017, number));

    /// <summary>A section that moved: each number with the first edition that prints it.</summary>
    public static CodeSection Section(params ReadOnlySpan<(int Since, string Number)> numbers) =>
        new(Document, [.. numbers]);

    public static CodeSection FromMemory(string number) => FromMemory((2017, number));

    public static CodeSection FromMemory(params ReadOnlySpan<(int Since, string Number)> numbers) =>
        new(Document, [.. numbers], Standing.FromMemory);
}
