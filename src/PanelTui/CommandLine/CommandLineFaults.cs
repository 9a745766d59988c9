using System.CommandLine;
using System.CommandLine.Parsing;
using PanelTui.Documents.Reading.Values;

namespace PanelTui.CommandLine;

/// <summary>What is wrong with a command line, in sentences of this program.</summary>
internal static class CommandLineFaults
{
    /// <summary>The sentences without prefix; empty for a command line that can be run.</summary>
    public static IReadOnlyList<string> Of(ParseResult parsed, RootCommand root)
    {
        var command = parsed.CommandResult.Command;
        if (BeforeTheCommand(parsed) is { } early)
            return [$"'{early}' stands before the command '{command.Name}'; write it after: paneltui {command.Name} {early} ..."];
        if (UnknownOption(parsed, root) is { } unknown) return [unknown, .. MistypedVerb(parsed, root)];
        string[] errors = [.. parsed.Errors.Select(error => Sentence(error, parsed)).Distinct()];
        return errors.Length == 0 ? [] : [.. errors, .. MistypedVerb(parsed, root)];
    }

    /// <summary>The first word before the command that would be ignored there: only `--no-input` holds for every command.</summary>
    private static string? BeforeTheCommand(ParseResult parsed)
    {
        var before = parsed.Tokens.TakeWhile(token => token.Type != TokenType.Command).ToList();
        if (before.Count == parsed.Tokens.Count) return null;
        return before.Find(token => token.Type is TokenType.Option or TokenType.Argument && token.Value != CommandLineRoot.NoInput)?.Value;
    }

    /// <summary>The library would take a mistyped option for a file name; `--` before it says that it is one.</summary>
    private static string? UnknownOption(ParseResult parsed, RootCommand root)
    {
        var word = parsed.Tokens.TakeWhile(token => token.Type != TokenType.DoubleDash)
            .FirstOrDefault(token => token.Type == TokenType.Argument && token.Value.Length > 1 && token.Value[0] == '-')?.Value;
        if (word is null) return null;
        var command = parsed.CommandResult.Command;
        var own = NamesOf(command).Append(CommandLineRoot.NoInput).ToHashSet();
        var name = word.Split('=')[0];
        if (root.Subcommands.SelectMany(NamesOf).Contains(name))
            return command == root ? $"'{name}' is an option of a command: name the command first" : $"'{command.Name}' has no option '{name}'";
        return $"there is no option '{name}'{DidYouMean.Hint(name, own)}";
    }

    private static IEnumerable<string> NamesOf(Command command) => command.Options.SelectMany(option => option.Aliases.Prepend(option.Name));

    private static string Sentence(ParseError error, ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        return error.SymbolResult switch
        {
            OptionResult { Tokens: [] } option => $"'{Typed(option)}' needs a value: {Expected(option.Option)}",
            OptionResult { Tokens: [var value] } option => $"'{Typed(option)}' does not take '{value.Value}'; expected: {Expected(option.Option)}",
            OptionResult option => $"'{Typed(option)}' is given {option.Tokens.Count} values, which is too many; expected: {Expected(option.Option)}",
            ArgumentResult { Tokens: [var value] } argument => $"'{value.Value}' is not {Expected(argument.Argument)}",
            ArgumentResult argument => Missing(command, argument.Argument),
            CommandResult when parsed.UnmatchedTokens is [var extra, ..] => TooMany(command, extra),
            CommandResult => $"'{command.Name}' needs {string.Join(' ', command.Arguments.Select(argument => argument.Name))}",
            _ when parsed.UnmatchedTokens is [var extra, ..] => TooMany(command, extra),
            _ => error.Message,
        };
    }

    private static string Missing(Command command, Argument argument) => argument.Arity.MinimumNumberOfValues > 1
        ? $"'{command.Name}' needs {argument.Description}"
        : $"'{command.Name}' needs {argument.Name}: {argument.Description}";

    private static string TooMany(Command command, string extra) => command.Arguments.Count == 0
        ? $"'{command.Name}' takes no argument, and '{extra}' is one"
        : $"'{extra}' is one argument too many; '{command.Name}' takes {string.Join(' ', command.Arguments.Select(argument => argument.Name))}";

    private static string Typed(OptionResult option) => option.IdentifierToken?.Value ?? option.Option.Name;

    private static string Expected(Symbol symbol) => symbol.Description ?? symbol.Name;

    private static IEnumerable<string> MistypedVerb(ParseResult parsed, RootCommand root) =>
        parsed.CommandResult.Command == root && parsed.Tokens is [{ Type: TokenType.Argument, Value: var first }, ..]
            && DidYouMean.Closest(first, Verbs.All.Select(verb => verb.Name)) is { } verb
            ? [$"did you mean the command '{verb}'?"]
            : [];
}
