namespace PanelTui.Documents.Tests.Writing.Campaign;

/// <summary>What came of a campaign.</summary>
internal sealed class Tally
{
    private readonly Dictionary<string, List<string>> _refusals = [];

    public List<string> Broken { get; } = [];

    public int Accepted { get; set; }

    public int Unreadable { get; set; }

    public int Refused => _refusals.Values.Sum(of => of.Count);

    public void Refuse(string reason, string where)
    {
        if (!_refusals.TryGetValue(reason, out var all)) _refusals[reason] = all = [];
        all.Add(where);
    }

    public string RefusalsByReason() => string.Join('\n', _refusals
        .OrderByDescending(of => of.Value.Count).Take(25).Select(of => $"{of.Value.Count} x {of.Key} ({of.Value[0]})"));

    public override string ToString() => $"{Accepted} edits accepted, {Refused} refused, {Unreadable} files not readable, {Broken.Count} laws broken";
}
