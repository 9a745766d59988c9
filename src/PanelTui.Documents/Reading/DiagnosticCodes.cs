namespace PanelTui.Documents.Reading;

/// <summary>The kinds of diagnostic, for scripts that tell them apart.</summary>
public static class DiagnosticCodes
{
    /// <summary>The text is no YAML, or YAML that the program does not read.</summary>
    public const string NotYaml = "not-yaml";

    public const string EmptyFile = "empty-file";

    /// <summary>A list where a mapping belongs, and the like.</summary>
    public const string WrongShape = "wrong-shape";

    public const string MissingKey = "missing-key";

    public const string UnknownKey = "unknown-key";

    public const string DuplicateKey = "duplicate-key";

    /// <summary>A value that cannot be read, is out of bounds, or contradicts another.</summary>
    public const string BadValue = "bad-value";

    /// <summary>A key with nothing behind it, which counts as not written.</summary>
    public const string EmptyValue = "empty-value";

    public const string NewerVersion = "newer-version";

    /// <summary>Two circuits of one id, or two scenarios of one name.</summary>
    public const string DuplicateName = "duplicate-name";

    /// <summary>A scenario that names no circuit of the file.</summary>
    public const string UnknownCircuit = "unknown-circuit";

    /// <summary>A place that no rule knows.</summary>
    public const string UnknownPlace = "unknown-place";

    /// <summary>A spare breaker with loads, which are not counted.</summary>
    public const string SpareWithLoads = "spare-with-loads";

    /// <summary>A character in a text that no one can see or type.</summary>
    public const string ControlCharacter = "control-character";

    /// <summary>A finding is accepted of a rule that this program does not have.</summary>
    public const string UnknownRule = "unknown-rule";

    /// <summary>A finding is accepted that is not there.</summary>
    public const string IdleAcceptance = "idle-acceptance";

    public const string TooMany = "too-many";

    /// <summary>How many diagnostics were left out.</summary>
    public const string More = "more";
}
