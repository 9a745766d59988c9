using System.Collections.Concurrent;
using PanelTui.Terminal;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Terminal;

/// <summary>The key filter and the library's own parser behind it: what is sent, and what the program gets.</summary>
#pragma warning disable CA1001 // The parser owns nothing of its own that needs disposal.
internal sealed class Keyboard
#pragma warning restore CA1001
{
    private readonly InputFilter _filter = new(TimeSpan.FromMilliseconds(50));
    private readonly InputProcessorImpl<char> _parser;
    private readonly ConcurrentQueue<char> _queue = new();

    public Keyboard()
    {
        _parser = new AnsiInputProcessor(_queue, new SteppedClock().Provider); // a clock that stands: nothing may need a time-out
        _parser.KeyDown += (_, key) => Keys.Add(key);
        _parser.Paste += (_, text) => Pasted.Add(text);
        _parser.MouseEventParsed += (_, mouse) => Mouse.Add(mouse);
    }

    public List<Key> Keys { get; } = [];

    public List<string> Pasted { get; } = [];

    public List<Mouse> Mouse { get; } = [];

    public TimeSpan? Patience => _filter.Patience;

    /// <summary>The letters that would be typed into a field.</summary>
    public string Typed => string.Concat(Keys.Where(key => !key.IsCtrl && !key.IsAlt && key.AsRune.Value >= ' ').Select(key => key.AsRune));

    public Keyboard Send(string sent) => Process(_filter.Feed(sent));

    /// <summary>Nothing more comes.</summary>
    public Keyboard Wait() => Process(_filter.Expire());

    private Keyboard Process(string keys)
    {
        foreach (var letter in keys)
            _queue.Enqueue(letter);
        _parser.ProcessQueue();
        _parser.GetParser().State.ShouldBe(AnsiResponseParserState.Normal, "the library waits for more");
        return this;
    }
}
