namespace PanelTui.Editing;

/// <summary>What the keys do in the field of a form that has the focus.</summary>
/// <param name="EnterGoesOn">Enter goes to the next field, and sends nothing yet.</param>
/// <param name="TabCompletes">Tab finishes the value that was begun.</param>
/// <param name="Tab">What Tab does else; nothing where it does nothing.</param>
/// <param name="HasOffers">There is something to choose from.</param>
/// <param name="TypingReplaces">All that stands in the field gives way to the first letter.</param>
internal readonly record struct FormKeys(bool EnterGoesOn, bool TabCompletes, string? Tab, bool HasOffers, bool TypingReplaces);
