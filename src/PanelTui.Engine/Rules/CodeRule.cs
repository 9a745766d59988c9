using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules;

/// <summary>One thing to check of a panel.</summary>
public abstract class CodeRule
{
    /// <summary>Lower case words with hyphens; it stands in reports and in files, and never changes.</summary>
    public abstract string Name { get; }

    public abstract Severity Severity { get; }

    /// <summary>What it asks, in one sentence.</summary>
    public abstract string Summary { get; }

    /// <summary>What goes wrong where it is not so.</summary>
    public abstract string Why { get; }

    /// <summary>What to check or change; a finding may be more particular.</summary>
    public abstract string Advice { get; }

    /// <summary>Nothing for a habit of the trade, which has no source.</summary>
    public virtual CodeSection? Section => null;

    /// <summary>Every section that a finding of it may cite; most rules rest on one.</summary>
    public virtual IEnumerable<CodeSection> Sections => Section is { } section ? [section] : [];

    public abstract IEnumerable<Finding> Check(RuleContext context);

    public Citation CiteIn(CodeEdition edition) => Section?.In(edition) ?? Citation.CommonPractice;

    private protected Finding Found(
        RuleContext context, IEnumerable<SpaceNumber> spaces, string message, string mend) =>
        new(Name, Severity, [.. spaces], message, CiteIn(context.Edition), mend);

    private protected Finding Found(RuleContext context, IEnumerable<SpaceNumber> spaces, string message) =>
        Found(context, spaces, message, Advice);

    /// <summary>A finding about no breaker in particular.</summary>
    private protected Finding Found(RuleContext context, string message, string mend) =>
        Found(context, [], message, mend);

    /// <summary>As above, with nothing more particular to do.</summary>
    private protected Finding Found(RuleContext context, string message) => Found(context, [], message, Advice);
}
