using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Beginning;

/// <summary>What has been answered, in the order of the questions.</summary>
internal sealed record Answers(ImmutableArray<(Question Question, string Text)> Given)
{
    public static readonly Answers None = new([]);

    /// <summary>The answer for a key; empty where it was left out or not asked for.</summary>
    public string this[string path] => Given.LastOrDefault(answer => answer.Question.Path == path).Text is { } text and not (Question.NotYet or Question.NotKnown) ? text : "";

    public PanelSystem System => PanelSystem.All.FirstOrDefault(system => system.Name == this["panel.system"]) ?? PanelSystem.SplitPhase;

    /// <summary>What is to be fed, in the order of the list.</summary>
    public ImmutableArray<UsualLoad> Loads
    {
        get
        {
            var words = this["circuits"].Split(", ");
            return [.. UsualLoads.All.Where(load => words.Contains(load.Name))];
        }
    }
}
