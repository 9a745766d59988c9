namespace PanelTui.Documents.Files;

/// <summary>A part of a file name that no other run uses and nobody guesses.</summary>
/// <remarks>
/// Not a Guid: that needs /dev/urandom, which a bare root file system lacks. Without it the letters are drawn from the
/// clock; the process number then keeps two runs apart. Every file of such a name is made only where there is none.
/// </remarks>
public static class UniqueName
{
    public static string New() =>
        $"{Environment.ProcessId:x}{Path.GetRandomFileName().Replace(".", "", StringComparison.Ordinal)}";
}
