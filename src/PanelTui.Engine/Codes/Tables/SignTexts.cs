namespace PanelTui.Engine.Codes.Tables;

/// <summary>Signs whose wording is prescribed, as seen in public sources.</summary>
/// <remarks>
/// At the inlet: a training page on 702.7(C) and a trade forum (forums.mikeholt.com, thread 125678). At the panel: a copy of the
/// text of Article 710 (thenecwiki.com).
/// </remarks>
public static class SignTexts
{
    public static readonly CodeSection AtInlet = Nec.Section("702.7(C)");

    /// <summary>
    /// Where the transfer equipment switches the neutral: only then is the source a system of its own.
    /// </summary>
    public const string SeparatelyDerived = "WARNING: FOR CONNECTION OF A SEPARATELY DERIVED (BONDED NEUTRAL) SYSTEM ONLY";

    public const string NotSeparatelyDerived =
        "WARNING: FOR CONNECTION OF A NONSEPARATELY DERIVED (FLOATING NEUTRAL) SYSTEM ONLY";

    public static readonly CodeSection AtPanelOnOneLegSource = Nec.Section("710.15(C)");

    public const string OneLegSource =
        "WARNING: SINGLE 120-VOLT SUPPLY. DO NOT CONNECT MULTIWIRE BRANCH CIRCUITS!";
}
