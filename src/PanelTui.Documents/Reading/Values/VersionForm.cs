using System.Globalization;

namespace PanelTui.Documents.Reading.Values;

/// <summary>The version of the format.</summary>
internal sealed class VersionForm() : ValueForm<int>("the version of the format, 1")
{
    /// <summary>The only version there is.</summary>
    public const int Current = 1;

    public override Outcome<int> Read(string text)
    {
        if (!int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var version) || version < 1)
            return Outcome.Refused<int>($"is {Quoted.Of(text)}; write the version of the format, 1");
        return version == Current
            ? Outcome.Of(version)
            : Outcome.Refused<int>(
                $"is {version}, a newer version of the format; this program reads version {Current}");
    }
}
