using System.Globalization;

namespace PanelTui.Documents.Recovery;

/// <summary>The run of the program that a journal or a lock belongs to, so that a later run can tell whether it still goes on.</summary>
/// <param name="Process">The number of the process.</param>
/// <param name="Started">When it started, in a unit of the system's own; numbers of processes are used again.</param>
/// <param name="Boot">Which start of the system that was; empty where the system does not tell.</param>
/// <param name="Host">The machine's name: a home folder may be shared by several.</param>
/// <param name="User">Who runs it.</param>
public sealed record Owner(int Process, long Started, string Boot, string Host, string User)
{
    private const string BootFile = "/proc/sys/kernel/random/boot_id";

    // Counted after the program's name, which is in brackets and may itself hold blanks and brackets: proc(5).
    private const int StateField = 0;
    private const int StartField = 19;

    /// <summary>This run.</summary>
    public static Owner Here { get; } = new(
        Environment.ProcessId,
        StartOf(Environment.ProcessId) ?? 0,
        File.Exists(BootFile) ? File.ReadAllText(BootFile).Trim() : "",
        Environment.MachineName,
        UserName);

    /// <summary>The user's name; the variables a login sets where the system has no list of users.</summary>
    private static string UserName
    {
        get
        {
            try
            {
                return Environment.UserName;
            }
            catch (Exception error) when (error is InvalidOperationException or IOException or UnauthorizedAccessException)
            {
                return Environment.GetEnvironmentVariable("LOGNAME") ?? Environment.GetEnvironmentVariable("USER") ?? "unknown user";
            }
        }
    }

    /// <summary>False where it has surely ended; of another machine that cannot be known.</summary>
    public bool MayGoOn => Host != Here.Host || (Boot == Here.Boot && StartOf(Process) == Started);

    /// <summary>A run of which only the number of its process is known; it may be one of another machine.</summary>
    internal static Owner Of(int process)
    {
        var folder = string.Create(CultureInfo.InvariantCulture, $"/proc/{process}");
        return StartOf(process) is { } started && Files.FileIdentity.Of(folder) is { } found
            ? Here with { Process = process, Started = started, User = UserOf(found.Owner) }
            : new(process, 0, "", "this or another machine", "somebody");
    }

    /// <summary>Whether there is a process of this number on this machine.</summary>
    internal static bool Runs(int process) => StartOf(process) is not null;

    /// <summary>As a sentence has it: user, host and process.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{User} on {Host}, process {Process}");

    /// <summary>The user's name, passwd(5): the first and third field; the number where it is not listed.</summary>
    private static string UserOf(uint number)
    {
        var text = number.ToString(CultureInfo.InvariantCulture);
        try
        {
            var lines = File.ReadLines("/etc/passwd").Select(line => line.Split(':'));
            return lines.FirstOrDefault(fields => fields.Length > 2 && fields[2] == text)?[0] ?? $"user {text}";
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return $"user {text}";
        }
    }

    private static long? StartOf(int process)
    {
        try
        {
            return OperatingSystem.IsLinux() ? StartInProc(process) : StartElsewhere(process);
        }
        catch (Exception error) when (error is IOException or ArgumentException or UnauthorizedAccessException or InvalidOperationException)
        {
            return null;
        }
    }

    // One that has ended and that its parent has not taken notice of is still listed, as Z or X.
    private static long? StartInProc(int process)
    {
        var line = File.ReadAllText(string.Create(CultureInfo.InvariantCulture, $"/proc/{process}/stat"));
        var fields = line[(line.LastIndexOf(')') + 2)..].Split(' ');
        return fields[StateField] is "Z" or "X" ? null : long.Parse(fields[StartField], CultureInfo.InvariantCulture);
    }

    private static long StartElsewhere(int process)
    {
        using var found = System.Diagnostics.Process.GetProcessById(process);
        return found.StartTime.ToUniversalTime().Ticks;
    }
}
