namespace PanelTui.CommandLine;

/// <summary>Where a verb reads and writes: data on <paramref name="Out"/>, messages on <paramref name="Error"/>.</summary>
internal sealed record Streams(Func<Stream> In, TextWriter Out, TextWriter Error)
{
    public static Streams OfThisProcess { get; } = new(Console.OpenStandardInput, Console.Out, Console.Error)
    {
        Raw = Console.IsOutputRedirected ? Console.OpenStandardOutput : null,
    };

    /// <summary>Standard output for bytes that are no text; nothing where it is a terminal.</summary>
    public Func<Stream>? Raw { get; init; }
}
