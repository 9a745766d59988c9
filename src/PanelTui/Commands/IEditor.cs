using System.Collections.Immutable;
using PanelTui.Editing;
using PanelTui.Pages;

namespace PanelTui.Commands;

/// <summary>What a command can ask of the screen it is pressed on.</summary>
internal interface IEditor
{
    Session Session { get; }

    EditorMode Mode { get; }

    /// <summary>The page that lies over the face, the last one opened.</summary>
    Page? Page { get; }

    /// <summary>A row of the page can be chosen now.</summary>
    bool CanChooseRow { get; }

    /// <summary>How many lines of the face, or rows of a page, are in sight.</summary>
    int PageOfLines { get; }

    /// <summary>Opens a form below the face or the page.</summary>
    void Open(Form form);

    /// <summary>Lays a page over the face, or over the page before it.</summary>
    void Open(Page page);

    /// <summary>Back to what lies below the page.</summary>
    void ClosePage();

    /// <summary>Back to the face, from however many pages.</summary>
    void CloseAllPages();

    void WalkPage(int rows);

    void ChooseRow();

    /// <summary>Sends text to the clipboard of whoever sits at the terminal.</summary>
    void CopyText(string text);

    /// <summary>Sends rows of cells to that clipboard, as a spreadsheet takes them.</summary>
    void CopyTable(ImmutableArray<ImmutableArray<string>> rows);

    /// <summary>Does something on the screen's thread, soon; asked from any thread.</summary>
    void Later(Action action);

    /// <summary>Paints everything anew.</summary>
    void Repaint();

    /// <summary>Stops the program for the shell's job control, and paints everything once it goes on.</summary>
    void Suspend();

    void Enter(EditorMode mode);

    void Leave();
}
