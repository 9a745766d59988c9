using System.Text;
using PanelTui.CommandLine;

namespace PanelTui.Tests.CommandLine;

/// <summary>A run of the command line: its exit code, and what it printed where.</summary>
internal sealed record Ran(int Code, string Out, string Error)
{
    public static Ran Of(params string[] args) => With("", args);

    public static Ran With(string input, params string[] args)
    {
        using var nothing = new MemoryStream(Encoding.UTF8.GetBytes(input));
        return Run(nothing, null, null, args);
    }

    /// <summary>Standard output is a terminal of so many columns.</summary>
    public static Ran OnScreen(int columns, bool hasColor, params string[] args) => Run(Stream.Null, null, new OutputScreen(columns, hasColor), args);

    /// <summary>A person at a terminal types these lines.</summary>
    public static Ran Answering(IEnumerable<string> lines, params string[] args)
    {
        using var nothing = new MemoryStream();
        using var person = new StringReader(string.Concat(lines.Select(line => $"{line}\n")));
        return Run(nothing, person, null, args);
    }

    /// <summary>What a terminal shows of a run: messages and data in the order in which they are written.</summary>
    public static string OnTerminal(params string[] args)
    {
        using var both = new StringWriter();
        CommandLineRoot.Run(args, new Streams(() => Stream.Null, both, both) { Screen = new OutputScreen(80, HasColor: true) }, EditVerb.Run);
        return both.ToString();
    }

    private static Ran Run(Stream input, TextReader? person, OutputScreen? screen, string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var streams = new Streams(() => input, output, error) { Person = person is null ? null : () => person, Screen = screen };
        var code = CommandLineRoot.Run(args, streams, EditVerb.Run);
        return new Ran(code, output.ToString(), error.ToString());
    }
}
