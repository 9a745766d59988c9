using System.CommandLine;
using System.CommandLine.Help;
using System.Reflection;
using PanelTui.Documents.Reading.Values;
using PanelTui.Terminal;

namespace PanelTui.CommandLine;

/// <summary>The command line as a whole: the verbs, the editor when there is none, help and version.</summary>
internal static class CommandLineRoot
{
    internal const string LookVariable = "PANELTUI_LOOK";
    private const int CommitLetters = 7;
    private const string NoInput = "--no-input";
    private const string DryRun = "--dry-run";
    private const string DryRunShort = "-n";

    public static int Run(string[] args, Streams streams, Func<string?, bool, Streams, int> edit)
    {
        streams = Told(args, streams);
        var root = Build(streams, edit);
        if (UnknownOption(root, args) is { } unknown) return Misunderstood([unknown], streams);
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0 && parsed.Action is not HelpPage)
            return Misunderstood([.. parsed.Errors.Select(error => error.Message), .. MistypedVerb(args)], streams);
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

    /// <summary>What the options that every command takes say of asking and of writing.</summary>
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
        root.Add(file);
        root.Add(ascii);
        root.Add(look);
        root.Add(new Option<bool>(NoInput) { Recursive = true, Description = "ask no question" });
        root.Add(new Option<bool>(DryRun, DryRunShort) { Recursive = true, Description = "write nothing, say what would be written" });
        root.SetAction(parsed =>
        {
            Look.Choose(parsed.GetValue(look) ?? Environment.GetEnvironmentVariable(LookVariable) ?? Look.Names[0]);
            return edit(parsed.GetValue(file), parsed.GetValue(ascii), streams);
        });
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
            if (option is VersionOption version) version.Action = new HelpPage(VersionPage, output);
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

    internal static string RootPage => HelpPage.Root.Replace(HelpPage.PlaceOfVerbs, VerbList.Text, StringComparison.Ordinal);

    /// <summary>`paneltui 1.2.3 (abc1234)` where the build knew its commit; then the licence.</summary>
    private static string VersionPage => $"paneltui {Version}{(Commit is { } commit ? $" ({commit})" : "")}\nMIT licence; comes with no warranty.";

    private static string? Commit =>
        typeof(CommandLineRoot).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+') is [_, { Length: >= CommitLetters } commit]
            ? commit[..CommitLetters] : null;

    internal static string Version => typeof(CommandLineRoot).Assembly.GetName().Version!.ToString(3);

    /// <summary>The library would take a mistyped option for a file name; `--` before it says that it is one.</summary>
    private static string? UnknownOption(RootCommand root, string[] args)
    {
        var known = root.Subcommands.Prepend(root).SelectMany(command => command.Options)
            .SelectMany(option => option.Aliases.Prepend(option.Name)).ToHashSet();
        var unknown = Array.Find([.. args.TakeWhile(arg => arg != "--")], arg => arg.Length > 1 && arg[0] == '-' && !known.Contains(arg));
        return unknown is null ? null : $"there is no option {unknown}{DidYouMean.Hint(unknown, known)}";
    }

    private static IEnumerable<string> MistypedVerb(string[] args) =>
        args.Length > 0 && DidYouMean.Closest(args[0], Verbs.All.Select(verb => verb.Name)) is { } verb && verb != args[0]
            ? [$"did you mean the command '{verb}'?"]
            : [];

    private static string OnOneLine(string error) => string.Join(' ', error.Split([' ', '\n', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries));

    private static int Misunderstood(IEnumerable<string> errors, Streams streams)
    {
        foreach (var error in errors) streams.Error.WriteLine(Presentation.DisplayText.Clean($"paneltui: {OnOneLine(error)}"));
        streams.Error.WriteLine("Try 'paneltui --help'.");
        return ExitCode.Unusable;
    }
}
