using System.Collections.Immutable;

namespace PanelTui.Documents.Reading.Values;

/// <summary>Where outlets are. Other words than the listed ones are kept, since places have many names.</summary>
internal sealed class PlaceForm() : ValueForm<string>("a place such as garage or outdoors")
{
    /// <summary>The places that the GFCI and AFCI sections tell apart (210.8, 210.12), from memory.</summary>
    public override ImmutableArray<string> Allowed { get; } =
    [
        "bathroom", "kitchen", "laundry", "garage", "accessory-building", "outdoors", "basement", "crawl-space", "sink",
        "bathtub", "boathouse", "damp", "wet", "locker-room", "rooftop", "service-bay",
        "bedroom", "living-room", "family-room", "dining-room", "den", "library", "sunroom", "recreation-room",
        "closet", "hallway", "attic", "shop", "office",
    ];

    public override Outcome<string> Read(string text)
    {
        var place = text.Trim();
        return place.Length is > 0 and <= Limits.IdLength
            ? Outcome.Of(Known(place) ?? place)
            : Outcome.Refused<string>($"is {Quoted.Of(text)}; write {Words}");
    }

    private string? Known(string place)
    {
        var hyphened = place.Replace(' ', '-').Replace('_', '-');
        return Allowed.FirstOrDefault(known => known.Equals(hyphened, StringComparison.OrdinalIgnoreCase));
    }
}
