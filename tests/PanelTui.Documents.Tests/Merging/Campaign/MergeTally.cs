using System.Text;

namespace PanelTui.Documents.Tests.Merging.Campaign;

/// <summary>How the merges of a campaign came out, in all and for each kind of edit that took part.</summary>
internal sealed class MergeTally
{
    private readonly Dictionary<Outcome, int> _all = [];
    private readonly Dictionary<(string Edit, Outcome Outcome), int> _byEdit = [];

    public List<string> Wrong { get; } = [];

    /// <summary>Asked, where git's merge of the lines did not ask and was right.</summary>
    public List<string> WorseThanLines { get; } = [];

    public int Shown { get; set; }

    public int Of(Outcome outcome) => _all.GetValueOrDefault(outcome);

    public void Add(CampaignMerge merge, Outcome outcome)
    {
        _all[outcome] = Of(outcome) + 1;
        var reason = merge.MustAsk == "a value cannot be read" ? "unreadable value" : null;
        foreach (var edit in merge.OursDid.Concat(merge.TheirsDid).Append(reason).OfType<string>().Distinct())
            _byEdit[(edit, outcome)] = _byEdit.GetValueOrDefault((edit, outcome)) + 1;
    }

    public override string ToString()
    {
        var text = new StringBuilder($"{"",-20} {"right",8} {"asked",8} {"needless",8} {"wrong",8}\n");
        text.Append(Row("all", Of));
        foreach (var edit in _byEdit.Keys.Select(key => key.Edit).Distinct().Order(StringComparer.Ordinal))
            text.Append(Row(edit, outcome => _byEdit.GetValueOrDefault((edit, outcome))));
        return text.Append($"asked where git's merge of the lines is right: {WorseThanLines.Count}").ToString();
    }

    private static string Row(string name, Func<Outcome, int> count) =>
        $"{name,-20} {count(Outcome.Right),8} {count(Outcome.RightlyAsked),8} {count(Outcome.AskedNeedlessly),8} {count(Outcome.Wrong),8}\n";
}
