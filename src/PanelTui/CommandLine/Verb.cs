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

    public Command Build(Streams streams)
    {
        var command = new Command(Name, Summary);
        Describe(command, streams);
        return command;
    }

    protected abstract void Describe(Command command, Streams streams);
}
