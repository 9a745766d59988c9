using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Appliances of a dwelling that are fastened in place: four or more count three quarters.</summary>
public static class ApplianceFactor
{
    public static readonly CodeSection Section = Nec.Section("220.53");

    public static readonly Percent Factor = 75.Pct;

    /// <summary>So many make the factor apply.</summary>
    public const int Least = 4;

    /// <summary>Since 2020 a motor below this does not count among them.</summary>
    public static readonly Horsepower LeastOutput = 0.25m.Hp;

    /// <summary>Since 2020 another appliance below this does not count among them.</summary>
    public static readonly Watts LeastPower = 500.W;

    /// <summary>Whether an edition asks for a least size.</summary>
    public static bool HasLeastSize(CodeEdition edition) => edition switch
    {
        CodeEdition.Nec2017 => false,
        CodeEdition.Nec2020 or CodeEdition.Nec2023 => true,
        _ => throw Unnamed.Of(edition),
    };
}
