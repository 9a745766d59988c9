namespace PanelTui.Tests;

/// <summary>A folder of its own for a test, gone with it.</summary>
internal sealed class TempFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("paneltui-test-");

    /// <summary>The path of a file in it; with a text, the file is written.</summary>
    public string File(string name, string? text = null)
    {
        var path = Path.Combine(_folder.FullName, name);
        if (text is not null) System.IO.File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
