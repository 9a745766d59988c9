using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Every command, in the order in which the line of keys and the page of keys show them.</summary>
internal static class CommandBook
{
    public static readonly ImmutableArray<EditorCommand> All =
    [
        new EditCommand(),
        new PlaceCommand(1, "Place a one-pole breaker", Key.D1, Key.Enter),
        new PlaceCommand(2, "Place a two-pole breaker", Key.D2),
        new PlaceCommand(3, "Place a three-pole breaker", Key.D3),
        new PlaceTandemCommand(),
        new DropCommand(),
        new PutBackCommand(),
        new CarryCommand(),
        new SectionsCommand(),
        new UndoCommand(),
        new RedoCommand(),
        new SaveCommand(),
        new CommandsCommand(),
        new HelpCommand(),
        new QuitCommand(),
        new WhyCommand(),
        new NextFindingCommand(),
        new FindingsCommand(),
        new ChangesCommand(),
        new RunCommand(),
        new SettleCommand(),
        new BalanceCommand(),
        new RemoveCommand(),
        new TableCommand(),
        new LoadsCommand(),
        new CopyBreakerCommand(),
        new PutCopyCommand(),
        new FindCommand(),
        new CopyTextCommand(),
        new SheetsCommand(),
        new SaveElsewhereCommand(),
        new RepaintCommand(),
        new SuspendCommand(),
        new SaveAndLeaveCommand(),
        new DiscardAndLeaveCommand(),
        new StayCommand(),
        .. CursorCommand.All,
        .. PageCommand.All,
    ];

    /// <summary>What works here, most useful first: a page's own keys before those of every page.</summary>
    public static IEnumerable<EditorCommand> Here(IEditor editor) =>
        (editor.Mode == EditorMode.Page ? editor.Page!.Commands : [])
            .Concat(All.Where(command => command.Modes.HasFlag(editor.Mode)));

    /// <summary>What a key means here: of several commands the one that can be done now.</summary>
    public static EditorCommand? For(Key key, IEditor editor)
    {
        var meant = Here(editor).Where(command => command.Keys.Contains(key)).ToList();
        return meant.Find(command => command.WhyNotNow(editor) is null) ?? meant.FirstOrDefault();
    }
}
