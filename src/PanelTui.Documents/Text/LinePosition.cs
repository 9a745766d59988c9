namespace PanelTui.Documents.Text;

/// <summary>A place as an editor shows it: line and column, both counted from 1, the column in UTF-16 units.</summary>
public readonly record struct LinePosition(int Line, int Column)
{
    public override string ToString() => $"{Line}:{Column}";
}
