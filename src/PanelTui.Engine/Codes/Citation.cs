using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes;

/// <summary>How well a citation stands.</summary>
public enum Standing
{
    /// <summary>The figure was seen in a published source.</summary>
    Seen,

    /// <summary>The figure is remembered; look it up in the adopted code book before leaning on it.</summary>
    FromMemory,

    /// <summary>A habit of the trade, with no published source.</summary>
    CommonPractice,
}

/// <summary>Where a figure comes from: document, edition, section or table, and how well that stands.</summary>
public sealed record Citation(string Document, CodeEdition? Edition, string Section, Standing Standing)
{
    /// <summary>What the user wrote down, such as a nameplate rating.</summary>
    public static readonly Citation Schedule = new("the schedule", null, "", Standing.Seen);

    /// <summary>A sum, a quotient, a phasor sum: nothing that a code would have to say.</summary>
    public static readonly Citation Arithmetic = new("arithmetic", null, "", Standing.Seen);

    public static readonly Citation CommonPractice = new("common practice", null, "", Standing.CommonPractice);

    /// <summary>As it is printed beside a figure: `NEC 2023 Table 240.6(A)`.</summary>
    public override string ToString() => Standing switch
    {
        Standing.CommonPractice => $"{Document}, no source",
        Standing.FromMemory => $"{Place}, from memory",
        Standing.Seen => Place,
        _ => throw Unnamed.Of(Standing),
    };

    private string Place => (Edition, Section) switch
    {
        ({ } edition, _) => $"{Document} {Shown.Exactly(edition.Year)} {Section}",
        (null, "") => Document,
        _ => $"{Document} {Section}",
    };
}
