using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>One entry of a mapping.</summary>
public sealed class YamlPair
{
    internal YamlPair(YamlNode key, YamlNode value)
    {
        Key = key;
        Value = value;
    }

    public YamlNode Key { get; }

    /// <summary>The value; an empty scalar where nothing is written.</summary>
    public YamlNode Value { get; }

    /// <summary>Where the <c>:</c> stands; null where there is none, as in <c>{a}</c>.</summary>
    public int? ColonOffset { get; internal set; }

    /// <summary>From the key (or its <c>?</c>) to the value's last character.</summary>
    public TextSpan Span => TextSpan.Between(Start, Math.Max(Value.End, Key.End));

    internal int? QuestionOffset { get; set; }

    internal int Start => QuestionOffset ?? Key.Start;

    internal int FullEnd => Math.Max(Value.FullEnd, Key.FullEnd);
}
