using PanelTui.Engine.Panels;

namespace PanelTui.Commands;

/// <summary>What a command can ask of the screen it is pressed on.</summary>
internal interface IEditor
{
    Session Session { get; }

    EditorMode Mode { get; }

    /// <summary>How many lines of the face are in sight.</summary>
    int PageOfLines { get; }

    /// <summary>Opens the form on the circuit under the cursor.</summary>
    void EditHere();

    /// <summary>Opens the form for a new breaker under the cursor.</summary>
    void PlaceHere(int poles, SpaceNumber at);

    /// <summary>Asks for another file name to save under.</summary>
    void AskWhere();

    void Enter(EditorMode mode);

    void Leave();
}
