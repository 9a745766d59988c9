using PanelTui.Engine;
namespace PanelTui.Documents.Reading.Fields;

/// <summary>A key with keys of its own below it.</summary>
internal sealed class SectionField(string path, FieldShape shape, string help) : Field(path, help)
{
    public override FieldShape Shape { get; } = shape;

    public override string Expected => Shape switch
    {
        FieldShape.Mapping => "a mapping of keys to values",
        FieldShape.ListOfMappings => "a list of mappings",
        FieldShape.Value or FieldShape.List => throw new ArgumentException($"{Path} has no keys below it."),
        _ => throw Unnamed.Of(Shape),
    };

    public override string? WhyNot(string text) => $"{Key} is {Expected}, not one value";
}
