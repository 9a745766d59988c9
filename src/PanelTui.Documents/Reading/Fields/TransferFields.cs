using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of `transfer`.</summary>
internal static class TransferFields
{
    public static readonly ValueField<TransferKind> Kind = new("transfer.kind", Choices.Transfer, "manual",
        "What does the switching") { Default = "manual" };

    public static readonly ValueField<Amperes> Rating = new("transfer.rating", Forms.Current, "60 A",
        "Its rating");

    public static readonly ValueField<bool> IntegralOcpd = new("transfer.integral_ocpd", Forms.YesNo, "no",
        "Whether it has overcurrent protection of its own") { Default = "no" };

    public static readonly ValueField<bool> SwitchesNeutral = new("transfer.switches_neutral", Forms.YesNo, "no",
        "Whether it switches the neutral along with the legs");

    public static readonly ValueField<bool> LoadManagement = new("transfer.load_management", Forms.YesNo, "no",
        "Whether it sheds loads so that the source is never asked for more than it has") { Default = "no" };

    public static readonly ImmutableArray<Field> All = [Kind, Rating, IntegralOcpd, SwitchesNeutral, LoadManagement];
}
