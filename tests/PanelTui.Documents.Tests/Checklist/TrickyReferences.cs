namespace PanelTui.Documents.Tests.Checklist;

/// <summary>Rows of <see cref="TrickyCaseTests"/>: anchors and aliases, and what a whole file may be.</summary>
internal static class TrickyReferences
{
    public static readonly (string Item, string File, string Edit, string Expected)[] Rows =
    [
        ("anchor on scalar", "a: &x 1\nb: 2\n", "set /a 3", "a: &x 3\nb: 2\n"),
        ("anchor on map", "a: &x\n  k: 1\nb: *x\n", "set /a/k 3", "a: &x\n  k: 3\nb: *x\n"),
        ("anchor on map", "a: &x {k: 1}\n", "add /a w x", "a: &x {k: 1, w: x}\n"),
        ("anchor on list", "a: &x\n- 1\nb: *x\n", "insert /a 1 w", "a: &x\n- 1\n- w\nb: *x\n"),
        ("anchor on empty", "a: &x # c\nb: *x\n", "set /a 3", "a: &x 3 # c\nb: *x\n"),
        ("alias as value", "a: &x 1\nb: *x # c\n", "read /b", "1"),
        ("alias as value", "a: &x 1\nb: *x # c\n", "set /b 2", "refused: /b repeats a value from elsewhere (*x); change it where it is marked &x"),
        ("alias as value", "a: &x 1\nb: *x # c\n", "clear /b", "a: &x 1\n"),
        ("alias as key", "a: &x k\n*x : 1\nb: 2\n", "set /b 3", "a: &x k\n*x : 1\nb: 3\n"),
        ("alias as item", "- &x a\n- b\n- *x\n", "drop / 1", "- &x a\n- *x\n"),
        ("alias as item", "- &x a\n- *x\n", "drop / 1", "- &x a\n"),
        ("<< with one", "d: &d {k: 1}\nc:\n  <<: *d\n", "add /c k 2", "d: &d {k: 1}\nc:\n  <<: *d\n  k: \"2\"\n"),
        ("<< with several", "a: &a {k: 1}\nb: &b {m: 2}\nc: {<<: [*a, *b], w: 3}\n", "clear /c/w", "a: &a {k: 1}\nb: &b {m: 2}\nc: {<<: [*a, *b]}\n"),
        ("remove anchor in use", "- &x a\n- *x\n", "drop / 0", "refused: the file could no longer be read, so nothing was changed: *x repeats a value marked &x, but there is none above it"),
        ("set anchored value", "a: &x 1 # c\nb: *x\n", "set /a 2", "a: &x 2 # c\nb: *x\n"),
        ("alias cycle", "a: &x {b: *x}\n", "open", "1:11: the alias *x contains itself"),
        ("%YAML", "%YAML 1.2\n---\na: 1\n", "set /a 2", "%YAML 1.2\n---\na: 2\n"),
        ("--- with comment", "--- # c\na: 1\n", "add-first / w x", "--- # c\nw: x\na: 1\n"),
        ("...", "a: 1\n...\n# e\n", "add / w x", "a: 1\nw: x\n...\n# e\n"),
        ("second document", "a: 1\n---\nb: 2\n", "open", "2:1: the file holds more than one YAML document; a schedule is one"),
        ("only comments", "# c\n\n# d\n", "add / w x", "# c\n\n# d\nw: x\n"),
        ("empty", "", "add / w x", "w: x\n"),
        ("list at the top", "- a\n", "insert / 0 w", "- w\n- a\n"),
        ("scalar at the top", "a # c\n", "set / b", "b # c\n"),
        ("scalar at the top", "a # c\n", "add / w x", "refused: / is not a mapping, so it can hold no w"),
    ];
}
