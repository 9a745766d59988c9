using PanelTui.Documents;
using PanelTui.Engine.Panels;

namespace PanelTui.Editing;

/// <summary>A breaker that was copied: what it was then, whatever has become of it since.</summary>
internal sealed record CopiedBreaker(Snapshot From, Circuit Circuit);
