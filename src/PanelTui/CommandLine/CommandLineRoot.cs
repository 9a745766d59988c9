using System.CommandLine;
using System.CommandLine.Help;

namespace PanelTui.CommandLine;

/// <summary>The command line as a whole: the verbs, the editor when there is none, help and version.</summary>
internal static class CommandLineRoot
{
    public static int Run(string[] args, Streams streams, Func<string?, bool, Streams, int> edit)
    {
        var parsed = Build(streams, edit).Parse(args);
        if (parsed.Errors.Count > 0 && parsed.Action is not HelpPage) return Misunderstood(parsed, streams);
        try
        {
            return parsed.Invoke(new InvocationConfiguration { Output = streams.Out, Error = streams.Error, EnableDefaultExceptionHandler = false });
        }
        catch (IOException) when (streams.Out is StreamWriter)
        {
            // Whoever read our output has gone away, or the disk is full: there is nobody left to tell.
            return ExitCode.Unusable;
        }
    }

    private static RootCommand Build(Streams streams, Func<string?, bool, Streams, int> edit)
    {
        var root = new RootCommand("The schedule of a standby-fed subpanel, in a terminal.");
        var file = new Argument<string?>("FILE") { Arity = ArgumentArity.ZeroOrOne, Description = "the schedule to open in the editor" };
        var ascii = new Option<bool>("--ascii") { Description = "draw with ASCII characters alone" };
        root.Add(file);
        root.Add(ascii);
        root.SetAction(parsed => edit(parsed.GetValue(file), parsed.GetValue(ascii), streams));
        foreach (var verb in Verbs.All)
        {
            var command = verb.Build(streams);
            command.Add(new HelpOption { Action = new HelpPage(verb.Page, streams.Out) });
            root.Add(command);
        }

        SetOwnPages(root, streams.Out);
        root.Add(HelpCommandOf(streams.Out));
        return root;
    }

    private static void SetOwnPages(RootCommand root, TextWriter output)
    {
        foreach (var option in root.Options)
        {
            if (option is HelpOption help) help.Action = new HelpPage(RootPage, output);
            if (option is VersionOption version) version.Action = new HelpPage($"paneltui {Version}", output);
        }
    }

    /// <summary>`paneltui help`, and `paneltui help check`.</summary>
    private static Command HelpCommandOf(TextWriter output)
    {
        var help = new Command("help", "explain a command");
        var topic = new Argument<string?>("COMMAND") { Arity = ArgumentArity.ZeroOrOne };
        help.Add(topic);
        help.SetAction(parsed =>
        {
            output.WriteLine(Verbs.All.FirstOrDefault(verb => verb.Name == parsed.GetValue(topic))?.Page ?? RootPage);
            return ExitCode.Clean;
        });
        return help;
    }

    internal static string RootPage => HelpPage.Root.Replace(
        HelpPage.PlaceOfVerbs,
        string.Join('\n', Verbs.All.Select(verb => $"  {verb.Name,-8} {verb.Summary}")),
        StringComparison.Ordinal);

    internal static string Version => typeof(CommandLineRoot).Assembly.GetName().Version!.ToString(3);

    private static int Misunderstood(ParseResult parsed, Streams streams)
    {
        foreach (var error in parsed.Errors) streams.Error.WriteLine($"paneltui: {error.Message}");
        streams.Error.WriteLine("Try 'paneltui --help'.");
        return ExitCode.Unusable;
    }
}
