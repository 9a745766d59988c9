using PanelTui.Documents.Files;
using PanelTui.Documents.Text;

namespace PanelTui.Editing;

/// <summary>What would be lost if the program ended now.</summary>
/// <param name="Schedule">The file that is edited.</param>
/// <param name="OnDisk">What it held when it was read or saved last.</param>
/// <param name="Disk">What kind of file that was.</param>
/// <param name="Text">What it would hold if the open form were sent and the file saved.</param>
/// <param name="Changes">How many steps of the user lie between the two.</param>
internal sealed record Work(string Schedule, SourceText OnDisk, DiskState Disk, string Text, int Changes)
{
    public bool IsSaved => Text == OnDisk.Text;
}
