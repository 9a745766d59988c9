using System.Globalization;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading.Values;

/// <summary>A breaker space: `5`, or a tandem half such as `17a`.</summary>
internal sealed class SpaceForm() : ValueForm<SpaceNumber>("a space such as 5, or 17a for a tandem half")
{
    public override Outcome<SpaceNumber> Read(string text)
    {
        if (!SpaceNumber.TryParse(text.Trim(), out var space))
            return Outcome.Refused<SpaceNumber>($"is {Quoted.Of(text)}; write {Words}");
        return space.Number <= SpaceNumber.Most
            ? Outcome.Of(space)
            : Outcome.Refused<SpaceNumber>(string.Create(
                CultureInfo.InvariantCulture,
                $"is {Quoted.Of(text)}; the most spaces a schedule may have is {SpaceNumber.Most}"));
    }
}
