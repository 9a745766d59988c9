using System.CommandLine;

namespace PanelTui.CommandLine;

/// <summary>One word of the command line: what it takes, what it does, and the page that explains it.</summary>
internal abstract class Verb
{
    public abstract string Name { get; }

    /// <summary>One line, for the list of verbs.</summary>
    public abstract string Summary { get; }

    /// <summary>Usage and examples, as `paneltui help NAME` and `paneltui NAME --help` print them.</summary>
    public abstract string Page { get; }

    /// <summary>True when it can write a file, and so takes `--dry-run`.</summary>
    protected virtual bool Writes => false;

    public Command Build(Streams streams)
    {
        var command = new Command(Name, Summary);
        Describe(command, streams);
        if (Writes) command.Add(new Option<bool>(CommandLineRoot.DryRun, CommandLineRoot.DryRunShort) { Description = "write nothing, say what would be written" });
        return command;
    }

    protected abstract void Describe(Command command, Streams streams);

    protected static Option<bool> JsonOption() => new("--json") { Description = "one JSON object on standard output" };

    protected static Option<bool> QuietOption(string description) => new("--quiet", "-q") { Description = description };

    /// <summary>Refuses a command line of this verb, and points to the verb's own help.</summary>
    protected int Misuse(Streams streams, string why) => streams.Misuse(Name, why);
}
