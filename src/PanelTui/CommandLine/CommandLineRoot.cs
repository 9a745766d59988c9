using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using System.Reflection;
using PanelTui.Documents.Reading.Values;
using PanelTui.Terminal;

namespace PanelTui.CommandLine;

/// <summary>The command line as a whole: the verbs, the editor when there is none, help and version.</summary>
internal static class CommandLineRoot
{
    internal const string LookVariable = "PANELTUI_LOOK";
    private const int CommitLetters = 7;
    internal const string NoInput = "--no-input";
    internal const string DryRun = "--dry-run";
    internal const string DryRunShort = "-n";

    public static int Run(string[] args, Streams streams, Func<string?, bool, Streams, int> edit)
    {
        streams = Told(args, streams);
        var root = Build(streams, edit);
        var parsed = root.Parse(args);
        var faults = parsed.Action is HelpPage || IsSuggesting(parsed) ? [] : CommandLineFaults.Of(parsed, root);
        if (faults.Count > 0) return Misunderstood(faults, parsed.CommandResult.Command, root, streams);
        try
        {
            return parsed.Invoke(new InvocationConfiguration { Output = streams.Out, Error = streams.Error, EnableDefaultExceptionHandler = false });
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            Terminal.Parting.Say($"paneltui: the output could not be written: {error.Message}");
            return ExitCode.Unusable;
        }
    }

    /// <summary>True for `[suggest:N]`, by which a shell asks how an unfinished line may go on.</summary>
    private static bool IsSuggesting(ParseResult parsed) => parsed.Tokens is [{ Type: TokenType.Directive }, ..];

    /// <summary>What the options say of asking and of writing.</summary>
    private static Streams Told(string[] args, Streams streams)
    {
        var options = args.TakeWhile(arg => arg != "--").ToHashSet();
        return streams with
        {
            Person = options.Contains(NoInput) ? null : streams.Person,
            WritesNothing = options.Contains(DryRun) || options.Contains(DryRunShort),
        };
    }

    private static RootCommand Build(Streams streams, Func<string?, bool, Streams, int> edit)
    {
        var root = new RootCommand("The schedule of a standby-fed subpanel, in a terminal.");
        var file = new Argument<string?>("FILE") { Arity = ArgumentArity.ZeroOrOne, Description = "the schedule to open in the editor" };
        var ascii = new Option<bool>("--ascii") { Description = "draw with ASCII characters alone" };
        var look = new Option<string?>("--look") { Description = string.Join(", ", Look.Names) };
        look.AcceptOnlyFromAmong([.. Look.Names]);
        root.Options.Clear();
        root.Add(file);
        root.Add(ascii);
        root.Add(look);
        root.Add(new Option<bool>(NoInput) { Recursive = true, Description = "ask no question" });
        root.Add(Help(RootPage, streams.Out));
        root.Add(new VersionOption("--version", "-V") { Action = new HelpPage(VersionPage, streams.Out) });
        root.SetAction(parsed =>
        {
            Look.Choose(parsed.GetValue(look) ?? Environment.GetEnvironmentVariable(LookVariable) ?? Look.Names[0]);
            return edit(parsed.GetValue(file), parsed.GetValue(ascii), streams);
        });
        foreach (var verb in Verbs.All) root.Add(Explained(verb.Build(streams), verb.Page, streams.Out));
        root.Add(Explained(HelpCommand(streams), RootPage, streams.Out));
        root.Add(Explained(VersionCommand(streams.Out), VersionPage, streams.Out));
        return root;
    }

    private static Command Explained(Command command, string page, TextWriter output)
    {
        command.Add(Help(page, output));
        return command;
    }

    private static HelpOption Help(string page, TextWriter output) => new("--help", "-h") { Action = new HelpPage(page, output) };

    /// <summary>`paneltui help`, and `paneltui help check`.</summary>
    private static Command HelpCommand(Streams streams)
    {
        var help = new Command("help", "explain a command");
        var topic = new Argument<string?>("COMMAND") { Arity = ArgumentArity.ZeroOrOne, Description = "a command of this program" };
        topic.CompletionSources.Add([.. Verbs.All.Select(verb => verb.Name)]);
        help.Add(topic);
        help.SetAction(parsed =>
        {
            var name = parsed.GetValue(topic);
            var page = name is null or "help" ? RootPage : name == "version" ? VersionPage : Verbs.All.FirstOrDefault(verb => verb.Name == name)?.Page;
            if (page is null) return streams.Misuse(null, $"there is no command '{name}'{DidYouMean.Hint(name!, Verbs.All.Select(verb => verb.Name))}");
            streams.Out.WriteLine(page);
            return ExitCode.Clean;
        });
        return help;
    }

    private static Command VersionCommand(TextWriter output)
    {
        var version = new Command("version", "the program's version");
        version.SetAction(_ =>
        {
            output.WriteLine(VersionPage);
            return ExitCode.Clean;
        });
        return version;
    }

    internal static string RootPage => HelpPage.Root.Replace(HelpPage.PlaceOfVerbs, VerbList.Text, StringComparison.Ordinal);

    /// <summary>`paneltui 1.2.3 (abc1234)` where the build knew its commit; then the licence.</summary>
    private static string VersionPage => $"paneltui {Version}{(Commit is { } commit ? $" ({commit})" : "")}\nMIT licence; comes with no warranty.";

    internal static string? Commit =>
        typeof(CommandLineRoot).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+') is [_, { Length: >= CommitLetters } commit]
            ? commit[..CommitLetters] : null;

    internal static string Version => typeof(CommandLineRoot).Assembly.GetName().Version!.ToString(3);

    private static int Misunderstood(IReadOnlyList<string> faults, Command command, RootCommand root, Streams streams)
    {
        foreach (var fault in faults.SkipLast(1)) streams.Refuse(fault);
        return streams.Misuse(command == root ? null : command.Name, faults[^1]);
    }
}
