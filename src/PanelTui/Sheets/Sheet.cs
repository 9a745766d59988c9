using System.Collections.Immutable;

namespace PanelTui.Sheets;

/// <summary>All that stands on a sheet, without a format.</summary>
/// <param name="Title">What it is, and of which panel.</param>
internal sealed record Sheet(string Title, ImmutableArray<Block> Blocks)
{
    /// <summary>Under everything on every sheet.</summary>
    public const string Deference =
        "Made from the schedule file; check it against the panel itself. It does not replace the code in force, "
        + "the authority having jurisdiction or licensed practice. Never connect two supplies; work de-energised.";

    /// <summary>That findings at error level are open; nothing where none is.</summary>
    public string? Open { get; init; }

    /// <summary>What ends it: what is open, and the deference.</summary>
    public string Foot => Open is null ? Deference : $"{Open} {Deference}";

    /// <summary>Its records, for formats that are read by programs; nothing where it is no list.</summary>
    public Table? Records { get; init; }

    /// <summary>Its picture, for formats that have nothing but a picture.</summary>
    public Drawing? Drawing { get; init; }

    /// <summary>Letter sizes on paper in points, largest first: the first that gets it on one page, else the last.</summary>
    public ImmutableArray<double> Sizes { get; init; } = [9];
}

/// <summary>What a reader may choose: the paper, and the label printer's tape.</summary>
/// <param name="Tape">The tape's width in millimetres.</param>
internal sealed record SheetChoices(Layout.Paper Paper, int Tape)
{
    public static readonly SheetChoices Default = new(Layout.Paper.Letter, 12);
}
