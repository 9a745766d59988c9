using System.Globalization;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;

namespace PanelTui.Documents.Reading;

/// <summary>
/// Checks `schedule`: a later version may mean other things by the same words, so it is not read at all.
/// </summary>
internal static class FormatVersion
{
    /// <summary>Whether there is any use in reading on.</summary>
    public static bool IsReadable(MappingReader top)
    {
        if (!top.Has(TopFields.Schedule))
        {
            top.Diagnostics.Error(
                DiagnosticCodes.MissingKey,
                top.Head,
                "the file does not say which version of the format it is in; write schedule: 1 as its first line");
            return true;
        }

        if (top.ValueOf(TopFields.Schedule) is not { IsScalar: true } node || !IsNewer(node.Value))
        {
            top.Value(TopFields.Schedule);
            return true;
        }

        top.Diagnostics.Error(
            DiagnosticCodes.NewerVersion, node.Span, $"schedule {TopFields.Schedule.Read(node.Value).Problem}");
        return false;
    }

    private static bool IsNewer(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var version)
        && version > VersionForm.Current;
}
