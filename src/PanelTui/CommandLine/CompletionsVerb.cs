using System.CommandLine;

namespace PanelTui.CommandLine;

/// <summary>`paneltui completions SHELL`: a script that lets the shell complete commands, options, figures and rules.</summary>
internal sealed class CompletionsVerb : Verb
{
    private const string Bash = """
        # paneltui: completion for bash
        _paneltui() {
          local line="${COMP_LINE}" word="${COMP_WORDS[COMP_CWORD]}"
          local IFS=$'\n'
          COMPREPLY=($(compgen -W "$(paneltui "[suggest:${COMP_POINT}]" "${line}" 2>/dev/null)" -- "${word}"))
          [ ${#COMPREPLY[@]} -eq 0 ] && COMPREPLY=($(compgen -f -- "${word}"))
        }
        complete -o filenames -F _paneltui paneltui
        """;

    private const string Zsh = """
        #compdef paneltui
        # paneltui: completion for zsh
        _paneltui() {
          local -a found
          found=("${(@f)$(paneltui "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)}")
          (( ${#found[1]} )) && compadd -a found
          _files
        }
        compdef _paneltui paneltui
        """;

    private const string Fish = """
        # paneltui: completion for fish
        function __paneltui
          set -l line (commandline -cp)
          paneltui "[suggest:"(string length -- $line)"]" "$line" 2>/dev/null
        end
        complete -c paneltui -a '(__paneltui)'
        """;

    public override string Name => "completions";

    public override string Summary => "a completion script for bash, zsh or fish";

    public override string Page => """
        Print a script that lets the shell complete commands, options, figures and
        rules.

        Usage:
          paneltui completions bash|zsh|fish

        Examples:
          paneltui completions bash >> ~/.bashrc
          paneltui completions zsh > ~/.zfunc/_paneltui
          paneltui completions fish > ~/.config/fish/completions/paneltui.fish

        Exit codes: 0 printed, 2 another shell.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var shell = new Argument<string>("SHELL") { Description = "bash, zsh or fish" };
        shell.AcceptOnlyFromAmong("bash", "zsh", "fish");
        command.Add(shell);
        command.SetAction(parsed => streams.Out.WriteLine(parsed.GetRequiredValue(shell) switch
        {
            "bash" => Bash,
            "zsh" => Zsh,
            _ => Fish,
        }));
    }
}
