using System.Globalization;
using System.Text;
using PanelTui.Documents.Reading.Fields;

namespace PanelTui.Documents.Intents;

/// <summary>
/// An id made of a circuit's name that no circuit has yet: `Sorting line lights` becomes `sorting-line-lights`.
/// </summary>
internal static class FreshId
{
    /// <summary>Longer ids make scenarios hard to read.</summary>
    private const int Longest = 24;

    /// <summary>Empty for a name without a letter or digit: no id is better than one that says nothing.</summary>
    public static string For(Snapshot snapshot, string name)
    {
        var stem = Stem(name);
        if (stem.Length == 0) return "";
        var taken = Taken(snapshot);
        return Candidates(stem).First(id => !taken.Contains(id));
    }

    private static IEnumerable<string> Candidates(string stem)
    {
        if (CircuitFields.Id.WhyNot(stem) is null) yield return stem;
        for (var number = 2; ; number++) yield return string.Create(CultureInfo.InvariantCulture, $"{stem}-{number}");
    }

    private static HashSet<string> Taken(Snapshot snapshot)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var count = snapshot.Places.NodeAt(Places.Circuits)?.Items.Length ?? 0;
        for (var ordinal = 0; ordinal < count; ordinal++)
        {
            var place = Places.Circuit(ordinal).Then(CircuitFields.Id.Key);
            if (snapshot.Places.NodeAt(place) is { IsScalar: true } id) taken.Add(id.Value);
        }

        return taken;
    }

    private static string Stem(string name)
    {
        var stem = new StringBuilder();
        foreach (var letter in name)
        {
            if (char.IsLetterOrDigit(letter)) stem.Append(char.ToLowerInvariant(letter));
            else if (stem.Length > 0 && stem[^1] != '-') stem.Append('-');
        }

        var words = stem.ToString().Trim('-');
        if (words.Length <= Longest) return words;
        var end = words.LastIndexOf('-', Longest);
        return end > 0 ? words[..end] : words[..Longest];
    }
}
