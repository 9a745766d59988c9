#pragma warning disable
using PanelTui.Documents.Text;
namespace PanelTui.Documents.Files;
public sealed class FileProblem(string m) : Exception(m);
public sealed record DiskState { public static readonly DiskState Missing = new(); }
public sealed record LoadedFile(SourceText Text, DiskState Disk);
public static class ScheduleFile {
  public static LoadedFile Load(string p) { try { return new(SourceText.FromBytes(System.IO.File.ReadAllBytes(p), p), new()); } catch (IOException e) { throw new FileProblem(e.Message);} }
  public static DiskState Save(string p, SourceText t, DiskState d) { System.IO.File.WriteAllBytes(p, t.ToBytes()); return new(); }
}
