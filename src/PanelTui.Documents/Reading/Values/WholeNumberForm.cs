using System.Globalization;

namespace PanelTui.Documents.Reading.Values;

/// <summary>A count within bounds.</summary>
internal sealed class WholeNumberForm(int least, int most)
    : ValueForm<int>(string.Create(CultureInfo.InvariantCulture, $"a whole number, {least} to {most}"))
{
    public override Outcome<int> Read(string text) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && number >= least && number <= most
            ? Outcome.Of(number)
            : Outcome.Refused<int>($"is {Quoted.Of(text)}; write {Words}");
}
