using System.Collections.Immutable;

namespace PanelTui.CommandLine;

/// <summary>
/// What a clone's git is told about schedules: to call `paneltui` from the path, else the copy that set it up, else to
/// do without.
/// </summary>
/// <remarks>
/// Each text is a line of shell that counts on nothing: a program may be missing, be built for another machine, be
/// killed, or end
/// with 0 and have done nothing. What git would have done by itself stands until the program has put its whole result
/// in a file of
/// its own and ended with 0 or 1. Names may begin with a dash and hold any character, so they are quoted and follow
/// `--` or `=`.
/// </remarks>
internal static class GitSettings
{
    public const string Attributes = "*.panel.yaml merge=panel diff=panel";

    public const string Driver = "merge.panel.driver";

    public const string Textconv = "diff.panel.textconv";

    public static ImmutableArray<(string Key, string Value)> All { get; } = Of(OwnWords, OwnFile);

    /// <param name="words">The copy that sets the clone up, as words of a shell.</param>
    /// <param name="file">The file that has to be there for it, as a word of a shell.</param>
    internal static ImmutableArray<(string Key, string Value)> Of(string words, string file) => With(Find(words, file));

    private static ImmutableArray<(string Key, string Value)> With(string find) =>
    [
        ("merge.panel.name", "schedule merge by meaning"),
        // Git expands % in this one, also in the path of our copy.
        (Driver, $"{$"f() ( {find} {Merge} );".Replace("%", "%%", StringComparison.Ordinal)} f %L %P %O %A %B"),
        ("merge.panel.recursive", "binary"),
        (Textconv, $"f() ( {find} {Show} ); f"),
        ("diff.panel.xfuncname", "^ *- (id|space): .*$"),
        ("difftool.panel.cmd", $"f() ( {find} {Compare} ); f"),
        ("mergetool.panel.cmd", $"f() ( {find} {MergeByHand} ); f"),
        ("mergetool.panel.trustExitCode", "true"),
    ];

    /// <summary>
    /// Defines `run`, which calls the program. Never the current folder's, which came with the repository.
    /// </summary>
    private static string Find(string words, string file) => $$"""
        set -f; IFS=:; p=;
        for d in $PATH; do case $d in /*)
        if [ -f "$d/paneltui" ] && [ -x "$d/paneltui" ] && ! [ "$d" -ef . ] 2>/dev/null; then p=$d/paneltui; break; fi;;
        esac; done; unset IFS;
        run() { if [ -n "$p" ]; then "$p" "$@"; elif [ -e {{file}} ]; then {{words}} "$@"; else return 127; fi; };
        """.ReplaceLineEndings(" ");

    /// <summary>
    /// Arguments: marker size, name, base, ours, theirs. Git's own merge of lines is in OURS before the program starts,
    /// and
    /// markers around the whole of both where git cannot merge lines.
    /// </summary>
    private static string Merge => """
        case $2 in [-@]*) set -- "$1" "./$2" "$3" "$4" "$5";; esac;
        o=$4.ours; n=$4.new; rm -f "$o" "$n"; cp "$4" "$o" || o=;
        m() { i=0; while [ $i -lt $1 ]; do printf %s "$2"; i=$((i+1)); done; echo "$3"; };
        git merge-file -q --marker-size=$1 -L ours -L base -L theirs "$4" "$3" "$5"; c=$?;
        if [ $c -gt 127 ]; then
        { m $1 '<' ' ours'; cat "$4"; echo; m $1 '=' ''; cat "$5"; echo; m $1 '>' ' theirs'; } >"$n" && mv -f "$n" "$4";
        fi;
        if [ $c -gt 0 ]; then c=1; fi;
        if [ -n "$o" ]; then run merge --marker-size $1 --path "$2" --output "$n" -- "$3" "$o" "$5"; r=$?;
        else r=127; fi;
        if [ $r -le 1 ] && [ -s "$n" ] && mv -f "$n" "$4"; then c=$r;
        else echo 'paneltui did not run to its end: this file was merged by lines' >&2; fi;
        rm -f "$4.ours" "$n"; exit $c
        """.ReplaceLineEndings(" ");

    private static string Show => """
        case $1 in /*) ;; *) set -- "./$1";; esac;
        if s=$(run diff --textconv -- "$1" 2>/dev/null && echo .) && [ "$s" != . ]; then printf %s "${s%.}";
        else cat "$1"; fi
        """.ReplaceLineEndings(" ");

    private static string Compare => """
        case $LOCAL in [-@]*) LOCAL=./$LOCAL;; esac; case $REMOTE in [-@]*) REMOTE=./$REMOTE;; esac;
        s=$(run diff -- "$LOCAL" "$REMOTE"); if [ $? -le 1 ] && [ -n "$s" ]; then printf '%s\n' "$s";
        else git --no-pager diff --no-index -- "$LOCAL" "$REMOTE"; fi
        """.ReplaceLineEndings(" ");

    private static string MergeByHand => """
        n=$LOCAL.new; rm -f "$n"; run merge --path "./$MERGED" --output "$n" -- "$BASE" "$LOCAL" "$REMOTE"; r=$?;
        if [ $r -le 1 ] && [ -s "$n" ] && cat "$n" >"$MERGED"; then rm -f "$n"; exit $r; fi;
        rm -f "$n"; exit 1
        """.ReplaceLineEndings(" ");

    private static string OwnFile => Quoted(IsRunByDotnet ? Assembly : Program);

    private static string OwnWords => IsRunByDotnet ? $"{Quoted(Program)} {Quoted(Assembly)}" : Quoted(Program);

    private static string Program => Environment.ProcessPath ?? "paneltui";

    private static string Assembly => Path.GetFullPath(Environment.GetCommandLineArgs()[0]);

    private static bool IsRunByDotnet =>
        Path.GetFileNameWithoutExtension(Program) == "dotnet" && Path.GetExtension(Assembly) == ".dll";

    internal static string Quoted(string word) => $"'{word.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
