using PanelTui.Commands;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>One of the answers to a question: its key, what it means in full and in a word, and what it does.</summary>
internal sealed record Answer(Key Key, string KeyName, string Word, string Title, Action<IEditor> Give);
