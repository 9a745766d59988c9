namespace PanelTui.Documents.Reading.Fields;

/// <summary>A key with keys of its own below it.</summary>
internal sealed class SectionField(string path, FieldShape shape, string help) : Field(path, help)
{
    public override FieldShape Shape { get; } = shape;

    public override string Expected =>
        Shape == FieldShape.Mapping ? "a mapping of keys to values" : "a list of mappings";

    public override string? WhyNot(string text) => $"{Key} is {Expected}, not one value";
}
