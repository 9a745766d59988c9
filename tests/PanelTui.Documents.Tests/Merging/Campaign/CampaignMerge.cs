using System.Collections.Immutable;
using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Merging.Campaign;

/// <summary>How a merge came out beside the right answer.</summary>
internal enum Outcome
{
    /// <summary>Merged, and it says what it should.</summary>
    Right,

    /// <summary>Asked, and nobody could have known.</summary>
    RightlyAsked,

    /// <summary>Asked what the files tell.</summary>
    AskedNeedlessly,

    /// <summary>Merged without a question, and wrong.</summary>
    Wrong,
}

/// <summary>One merge of the campaign: who did what, the three files, and the right answer.</summary>
internal sealed class CampaignMerge
{
    private readonly RightAnswer _answer;
    private readonly bool _isTroubled;

    public CampaignMerge(int seed)
    {
        var dice = new Dice(seed);
        var (withIds, trouble, inBraces) = (seed % 3 != 0, seed / 3 % 3 == 0, seed / 9 % 3 == 0);
        Seed = seed;
        do
        {
            var was = HiddenEdits.Begin(dice, withIds, trouble);
            (var ours, OursDid) = new HiddenEdits(dice, 1).Several(was);
            (var theirs, TheirsDid) = new HiddenEdits(dice, 2).Several(was);
            IsMisleading = new Recognition(was, ours).IsMisled || new Recognition(was, theirs).IsMisled;
            _answer = RightAnswer.Of(was, ours, theirs);
            _isTroubled = was.HasTrouble || ours.HasTrouble || theirs.HasTrouble;
            (Was, Ours, Theirs) = (was.Yaml(inBraces), ours.Yaml(inBraces), theirs.Yaml(inBraces));
        }
        while (IsMisleading);

        Notes = [.. Lines(Ours).Concat(Lines(Theirs)).Where(line => line.StartsWith('#')).Except(Lines(Was)).Distinct()];
    }

    public int Seed { get; }

    public ImmutableArray<string> OursDid { get; }

    public ImmutableArray<string> TheirsDid { get; }

    public string Was { get; }

    public string Ours { get; }

    public string Theirs { get; }

    /// <summary>The comments that a side wrote.</summary>
    public ImmutableArray<string> Notes { get; }

    private bool IsMisleading { get; }

    /// <summary>Why a person has to be asked; null when nobody has to be.</summary>
    public string? MustAsk => IsOneSided ? null : _isTroubled ? "a value cannot be read" : _answer.Ask;

    private bool IsOneSided => Ours == Theirs || Ours == Was || Theirs == Was;

    public bool SaysRight(string merged) => IsOneSided
        ? merged == (Ours == Was ? Theirs : Ours)
        : MergedFacts.Of(merged).SequenceEqual(_answer.Facts) && Notes.All(note => Lines(merged).Contains(note));

    public Outcome Judge(ScheduleMerge merge)
    {
        if (!merge.IsClean) return MustAsk is null ? Outcome.AskedNeedlessly : Outcome.RightlyAsked;
        var merged = merge.Settled().Text;
        return (MustAsk is null || IsOneOfBoth(merged)) && SaysRight(merged) ? Outcome.Right : Outcome.Wrong;
    }

    // A side that has all of the other's changes stands as it is, readable or not.
    private bool IsOneOfBoth(string merged) => _isTroubled && _answer.Ask is null && (merged == Ours || merged == Theirs);

    public ScheduleMerge Merge() => ScheduleMerge.Of(SourceText.FromString(Was), SourceText.FromString(Ours), SourceText.FromString(Theirs));

    public override string ToString() =>
        $"seed {Seed}\nours: {string.Join(", ", OursDid)}\ntheirs: {string.Join(", ", TheirsDid)}\nmust ask: {MustAsk ?? "no"}\n--- was\n{Was}--- ours\n{Ours}--- theirs\n{Theirs}";

    private static IEnumerable<string> Lines(string text) => text.Split('\n').Select(line => line.Trim());
}
