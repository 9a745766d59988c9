namespace PanelTui.Engine.Codes.Tables;

/// <summary>A place whose outlets need protection, by the word that schedules use for it, from an edition on.</summary>
/// <param name="Place">As `places` writes it.</param>
/// <param name="Since">The first edition that lists it.</param>
/// <param name="Part">What part of it older editions mean; nothing where all of it is meant.</param>
/// <param name="WholeSince">The first edition that means all of it; nothing where none does.</param>
public sealed record PlaceRow(
    string Place, CodeEdition Since = CodeEdition.Nec2017, string? Part = null, CodeEdition? WholeSince = null)
{
    /// <summary>`basement`, or `basement (where unfinished)` in an edition that means that part alone.</summary>
    public string In(CodeEdition edition) => IsPartIn(edition) ? $"{Place} ({Part})" : Place;

    public bool IsPartIn(CodeEdition edition) => Part is not null && !(edition >= WholeSince);
}
