using System.Collections.Immutable;

namespace PanelTui.Engine.Codes;

/// <summary>One rule of a code under the numbers it had over the editions: numbers move far more often than rules do.</summary>
/// <remarks>Each number stands with the first edition that prints it, oldest first.</remarks>
public sealed record CodeSection(
    string Document, ImmutableArray<(int Since, string Number)> Numbers, Standing Standing = Standing.Seen)
{
    /// <summary>The citation as an edition prints it; an edition older than the first number takes the first.</summary>
    public Citation In(CodeEdition edition)
    {
        var number = Numbers[0].Number;
        foreach (var (since, later) in Numbers)
            number = since <= edition.Year ? later : number;
        return new Citation(Document, edition, number, Standing);
    }
}
