using PanelTui.Documents.Files;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Files;

/// <summary>A folder of its own for each test, gone afterwards.</summary>
public abstract class TestFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("paneltui-test");

    protected string Folder => _folder.FullName;

    protected string PathOf(string name) => Path.Combine(Folder, name);

    protected string Write(string name, string text)
    {
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    private protected static SavedFile Save(string path, string text, DiskState expected) =>
        ScheduleFile.Save(path, SourceText.FromString(text), expected);

    private protected static SavedFile Resave(string path, string text) => Save(path, text, ScheduleFile.Look(path));

    private protected static SaveRefused Refused(string path, string text, DiskState expected) =>
        Should.Throw<SaveRefused>(() => Save(path, text, expected));

    protected string[] Names() => [.. _folder.GetFileSystemInfos().Select(file => file.Name).Order(StringComparer.Ordinal)];

    public void Dispose()
    {
        Dispose(isDisposing: true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool isDisposing) => _folder.Delete(recursive: true);
}
