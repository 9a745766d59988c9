using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules;

/// <summary>Something about the panel that wants a look.</summary>
/// <remarks>The message says what is wrong, with its figures; the mend says what to check or change.</remarks>
public sealed record Finding(
    string Rule, Severity Severity, ImmutableArray<SpaceNumber> Spaces, string Message, Citation Cite, string Mend);
