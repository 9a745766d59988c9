namespace PanelTui.CommandLine;

/// <summary>Where a verb reads and writes: data on <paramref name="Out"/>, messages on <paramref name="Error"/>.</summary>
internal sealed record Streams(Func<Stream> In, TextWriter Out, TextWriter Error)
{
    public static Streams OfThisProcess { get; } = new(Console.OpenStandardInput, Console.Out, Console.Error);
}
