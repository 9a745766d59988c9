using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Reading;

/// <summary>The way into a file: the mapping at its top, once nothing stands against reading it.</summary>
internal static class TopMapping
{
    public static MappingReader? Of(YamlTree tree, DiagnosticList diagnostics)
    {
        ReportDuplicateKeys(tree, diagnostics);
        if (tree.Root is not { } root || root.IsEmpty)
        {
            diagnostics.Error(
                DiagnosticCodes.EmptyFile, default, "the file holds no schedule; start one with `paneltui new`");
            return null;
        }

        return AliasesAreSound(tree, diagnostics) && IsMapping(Aliases.Resolve(root), diagnostics) && IsSchedule(Aliases.Resolve(root), diagnostics)
            ? new(root, "", "the schedule", diagnostics)
            : null;
    }

    private static bool IsMapping(YamlNode root, DiagnosticList diagnostics)
    {
        if (root.IsMapping) return true;
        diagnostics.Error(
            DiagnosticCodes.WrongShape,
            new(root.Span.Start, 0),
            $"the file is {Shapes.Name(root)}; a schedule is keys with values, the first of them schedule: 1");
        return false;
    }

    /// <summary>Whether a key at the top is one of a schedule, or near one; else the file is about something else.</summary>
    private static bool IsSchedule(YamlNode root, DiagnosticList diagnostics)
    {
        var known = TopFields.All.Select(field => field.Key).ToList();
        if (root.Pairs.IsEmpty || root.Pairs.Any(pair => IsNear(pair.Key.Value, known))) return true;
        diagnostics.Error(
            DiagnosticCodes.MissingKey,
            new(root.Span.Start, 0),
            $"this is YAML, but not a schedule of a panel: it has none of {Listed.Or([.. known])}; `paneltui new` starts one");
        return false;
    }

    /// <summary>A merge key may bring any other with it.</summary>
    private static bool IsNear(string key, List<string> known) => key == "<<" || known.Contains(key) || DidYouMean.Closest(key, known) is not null;

    private static bool AliasesAreSound(YamlTree tree, DiagnosticList diagnostics)
    {
        try
        {
            Aliases.Check(tree);
            return true;
        }
        catch (YamlProblem problem)
        {
            diagnostics.Error(DiagnosticCodes.NotYaml, new(problem.Offset, 0), problem.Message);
            return false;
        }
    }

    private static void ReportDuplicateKeys(YamlTree tree, DiagnosticList diagnostics)
    {
        foreach (var (key, first, second) in DuplicateKeys.Of(tree))
        {
            var line = tree.Source.PositionOf(first.Start).Line;
            diagnostics.Error(
                DiagnosticCodes.DuplicateKey,
                second,
                $"the key {Quoted.Of(key)} stands here and in line {line}; keep one of them");
        }
    }
}
