using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>One entry of a sequence.</summary>
public sealed class YamlItem
{
    internal YamlItem(YamlNode value) => Value = value;

    public YamlNode Value { get; }

    /// <summary>Where the <c>-</c> stands; null in a flow sequence.</summary>
    public int? DashOffset { get; internal set; }

    /// <summary>From the dash, where there is one, to the value's last character.</summary>
    public TextSpan Span => TextSpan.Between(Start, Value.End);

    internal int Start => DashOffset ?? Value.Start;
}
