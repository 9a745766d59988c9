using System.CommandLine;
using PanelTui.Engine;

namespace PanelTui.CommandLine;

/// <summary>What a painted word means.</summary>
internal enum Tint
{
    /// <summary>No color.</summary>
    None,

    /// <summary>An error, or what was removed.</summary>
    Bad,

    /// <summary>A warning, or what was moved or changed.</summary>
    Doubtful,

    /// <summary>A note.</summary>
    Remark,

    /// <summary>What was added.</summary>
    Good,
}

/// <summary>The option `--color` and the sequences for it.</summary>
internal static class Coloring
{
    private const string Always = "always";
    private const string Never = "never";
    private const string Auto = "auto";

    public static Option<string> Option()
    {
        var option = new Option<string>("--color") { Description = "auto, always or never", DefaultValueFactory = _ => Auto };
        option.AcceptOnlyFromAmong(Auto, Always, Never);
        return option;
    }

    /// <summary>Auto paints on a terminal with color, where NO_COLOR is not set.</summary>
    public static bool IsOn(string choice, Streams streams) => choice switch
    {
        Always => true,
        Never => false,
        _ => streams.Screen is { HasColor: true },
    };

    public static string Of(Tint tint, string word) => tint switch
    {
        Tint.None => word,
        Tint.Bad => $"\e[31m{word}\e[0m",
        Tint.Doubtful => $"\e[33m{word}\e[0m",
        Tint.Remark => $"\e[36m{word}\e[0m",
        Tint.Good => $"\e[32m{word}\e[0m",
        _ => throw Unnamed.Of(tint),
    };
}
