using System.Collections.Immutable;
using PanelTui.Engine.Codes.Tables;

namespace PanelTui.Documents.Reading.Values;

/// <summary>A receptacle configuration of NEMA WD 6: `14-50`, `L14-30`, `TT-30`.</summary>
internal sealed class OutletForm() : ValueForm<string>("a NEMA configuration such as 14-50 or L14-30")
{
    public override ImmutableArray<string> Offered { get; } = [.. OutletConfigurations.All.Select(outlet => outlet.Name)];

    public override string Written(string text)
    {
        var written = text.Trim().ToUpperInvariant();
        return IsConfiguration(written) ? written : IsConfiguration(Alone(written)) ? Alone(written) : text.Trim();
    }

    /// <summary>Those of that many amperes, or of that family.</summary>
    public override ImmutableArray<string> Meant(string text) => Alone(text.Trim().ToUpperInvariant()).TrimEnd('A', ' ') is { Length: > 0 } part
        ? [.. Offered.Where(name => name.Split('-').Contains(part)).OrderByDescending(name => name.EndsWith($"-{part}", StringComparison.Ordinal))]
        : [];

    public override Outcome<string> Read(string text)
    {
        var written = text.Trim().ToUpperInvariant();
        if (IsConfiguration(written)) return Outcome.Of(written);
        var shorter = Alone(written);
        return IsConfiguration(shorter)
            ? Outcome.Refused<string>($"is {Quoted.Of(text)}; write the configuration alone, {shorter}")
            : Outcome.Refused<string>($"is {Quoted.Of(text)}; write {Words}");
    }

    private static string Alone(string written) =>
        written.Replace("NEMA", "", StringComparison.Ordinal).Trim().TrimEnd('R', 'P', 'C');

    private static bool IsConfiguration(string text)
    {
        var parts = text.Split('-');
        return parts.Length == 2 && IsFamily(parts[0]) && parts[1].Length is 1 or 2 && parts[1].All(char.IsAsciiDigit);
    }

    /// <summary>`14`, `L14` (locking), `ML2` (midget locking) or `TT` (travel trailer).</summary>
    private static bool IsFamily(string text)
    {
        var digits = text.StartsWith("ML", StringComparison.Ordinal) ? text[2..] : text.TrimStart('L');
        return text == "TT" || (digits.Length is 1 or 2 && digits.All(char.IsAsciiDigit));
    }
}
