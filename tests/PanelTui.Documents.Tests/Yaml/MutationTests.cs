using PanelTui.Documents.Tests.Writing.Campaign;

namespace PanelTui.Documents.Tests.Yaml;

/// <summary>
/// Broken files never throw anything but a problem with a place. PANELTUI_CAMPAIGN=n tries ten times n.
/// </summary>
public class MutationTests
{
    private const string Signs = " \n\t:-?#&*!|>'\"%@`{}[],.<=~\r\\ax0é😀\u2028\u0000";

    [Fact]
    public void A_mutated_file_opens_or_is_refused()
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("PANELTUI_CAMPAIGN"), out var files) ? files * 10 : 10_000;
        for (var seed = 0; seed < count; seed++) HostileTests.Survives(Mutated(RandomYaml.Of(seed / 10), new Dice(seed)));
    }

    [Fact]
    public void A_file_cut_at_any_place_opens_or_is_refused()
    {
        var text = RandomYaml.Of(11) + RandomYaml.Of(12);
        for (var length = 0; length < text.Length; length++) HostileTests.Survives(text[..length]);
    }

    private static string Mutated(string text, Dice dice)
    {
        for (var left = dice.Next(1, 5); left > 0; left--)
        {
            var at = dice.Next(text.Length + 1);
            var length = Math.Min(dice.Next(4), text.Length - at);
            text = dice.Next(3) switch
            {
                0 => text.Remove(at, length),
                1 => text.Insert(at, Signs[dice.Next(Signs.Length)].ToString()),
                _ => text.Insert(dice.Next(text.Length + 1), text.Substring(at, length)),
            };
        }

        return text;
    }
}
