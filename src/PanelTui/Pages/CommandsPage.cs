using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>Every command with its key, narrowed down by typing a part of its name, of how it is used, or its key; one that cannot run now says why. Enter runs it.</summary>
/// <param name="from">What can be done where the list was opened.</param>
internal sealed class CommandsPage(IEditor from) : Page
{
    private const int KeyColumns = 7;

    public override bool TakesText => true;

    public override string Title(Session session) =>
        Typed.Length == 0 ? "Commands: type a name, a use or a key; Enter runs it" : $"Commands with: {Typed}";

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        var here = CommandBook.All.Where(command => command.Modes.HasFlag(EditorMode.Face)).ToList();
        var rows = Match.Of(here, command => command.Title, Typed).Union(Match.Of(here, TextOf, Typed))
            .Select(command => Row(command, columns))
            .ToImmutableArray();
        return rows.IsEmpty ? [new PageRow($"No command has {DisplayText.Clean(Typed)} in its name, key or use.")] : rows;
    }

    /// <summary>What is searched: the name, the key, and what the guide says of that key.</summary>
    private static string TextOf(EditorCommand command) =>
        $"{command.Title} {command.KeyName} {string.Join(' ', Guide.Of(command.KeyName))}";

    private PageRow Row(EditorCommand command, int columns)
    {
        var why = command.WhyNotNow(from);
        var text = $"{DisplayText.Fit(command.KeyName, KeyColumns)}{command.Title}";
        return why is null
            ? new PageRow(text, Tone.Plain, editor => Run(editor, command))
            : new PageRow(DisplayText.Fit($"{text}: {DisplayText.Clean(why)}", columns), Tone.Faint, editor => editor.Session.Say(why));
    }

    private static void Run(IEditor editor, EditorCommand command)
    {
        editor.CloseAllPages();
        command.Run(editor);
    }
}
