namespace PanelTui.Documents.Tests.Growth;

/// <summary>A kind of file that is legal and far larger than any schedule, in any size: a small panel, and much of one thing.</summary>
/// <param name="Name">What there is much of.</param>
/// <param name="Most">How many of it the limits of a file allow, about.</param>
/// <param name="Text">The file with so many of it. Its second circuit is `Well pump` in space 5.</param>
public sealed record LargeFile(string Name, int Most, Func<int, string> Text)
{
    /// <summary>Circuits beside the first two, where there are more.</summary>
    private const int More = 8;

    private const string Loads = "loads: [{kind: motor, rating: 1/2 hp}, {kind: lighting, rating: 480 W}]";

    public static IReadOnlyList<LargeFile> All { get; } =
    [
        new("unknown keys at the top", 20_000, count => Panel(below: Lines(count, at => $"key_{at}: {at}"))),
        new("unknown keys of a circuit", 20_000, count => Panel(ofCircuit: Lines(count, at => $"    key_{at}: {at}"))),
        new("anchors", 50_000, count => Panel(below: "x:\n" + Lines(count, at => $"  - &a{at} v{at}"))),
        new("aliases", 1_000, count => Panel(above: "x: &a {b: 1, c: 2}\n", below: "y:\n" + Lines(count, _ => "  - *a"))),
        new("merge keys", 900, count => Panel(above: $"x: &a {{{Words(45, at => $"b{at}: 1")}}}\n", below: "y:\n" + Lines(count, _ => "  - <<: *a"))),
        new("comment lines", 180_000, count => Panel(above: Lines(count, _ => "# a comment on a line"))),
        new("comments inside a circuit", 180_000, count => Panel(ofCircuit: Lines(count, _ => "    # a comment here"))),
        new("comments between circuits", 180_000, count => Panel(between: Lines(count, _ => "  # a comment here"))),
        new("comments at the end of lines", 60_000, count => Panel(below: "x:\n" + Lines(count, at => $"  - v{at} # a comment on a line"))),
        new("blank lines", 3_000_000, count => Panel(above: new string('\n', count))),
        new("blank lines between circuits", 3_000_000, count => Panel(between: new string('\n', count))),
        new("blank lines that end in CR LF", 1_500_000, count => Panel(above: string.Concat(Enumerable.Repeat("\r\n", count)))),
        new("aliases of a long value", 900, count => Panel(above: $"x: &a {new string('v', 4_000)}\n", below: "y:\n" + Lines(count, _ => "  - *a"))),
        new("deep nesting", 3_000, count => Panel(below: "x:\n" + Lines(count, _ => "  - " + new string('[', 28) + "1" + new string(']', 28)))),
        new("deep nesting by indentation", 1_500, count => Panel(below: "x:\n" + string.Concat(Enumerable.Range(0, count).Select(at => $"  k{at}:\n" + string.Concat(Enumerable.Range(2, 27).Select(deep => new string(' ', 2 * deep) + "k:\n")))))),
        new("one long line of values", 21_000, count => Panel(below: $"x: [{string.Join(", ", Enumerable.Repeat("1", count))}]\n")),
        new("long lines", 60, count => Panel(below: "x:\n" + Lines(count, _ => $"  - {new string('v', 60_000)}"))),
        new("a long comment", 65_000, count => Panel(above: $"# {new string('c', count)}\n")),
        new("long flow mapping", 50_000, count => Panel(below: "x: {\n" + Lines(count, at => $"  k{at}: v{at},") + "}\n")),
        new("long flow list", 100_000, count => Panel(below: "x: [\n" + Lines(count, at => $"  v{at},") + "]\n")),
        new("lines of text", 10_000, count => Panel(below: "x: |\n" + Lines(count, _ => "  text"))),
        new("texts of several lines", 20_000, count => Panel(below: "x:\n" + Lines(count, at => $"  - |\n    text {at}\n    more"))),
        new("quoted values", 60_000, count => Panel(below: "x:\n" + Lines(count, at => $"  - \"v {at}\""))),
        new("entries like circuits under a key of its own", 20_000, count => Panel(below: "old_circuits:\n" + Lines(count, at => $"  - space: {at}\n    name: Circuit {at}\n    breaker: 20 A"))),
        new("loads of every circuit", 100, count => Panel(circuits: string.Concat(Enumerable.Range(9, More).Select(at => Circuit(at, $"Circuit {at}", $"loads: [{Words(count, load => $"{{kind: lighting, rating: {load + 1} W}}")}]"))))),
        new("scenarios", 100, count => Panel(circuits: Circuits, below: "scenarios:\n" + Lines(count, at => $"  - name: Scenario {at}\n    running: [well, {Words(More, id => $"c{id + 9}")}]\n    starting: well"))),
        new("accepted findings", 200, count => Panel(circuits: Circuits, below: "accepted:\n" + Lines(count, at => $"  - {{rule: directory-text-vague, space: {at + 9}, because: checked {at}}}"))),
        new("combining marks in a name", 390, count => Panel(name: "Well pump" + new string('\u0301', count))),
        new("combining marks in every name", 390, count => Panel(circuits: string.Concat(Enumerable.Range(9, More).Select(at => Circuit(at, $"Circuit {at}" + new string('\u0301', count), Loads))))),
        new("wide letters in every name", 195, count => Panel(circuits: string.Concat(Enumerable.Range(9, More).Select(at => Circuit(at, $"Circuit {at}" + string.Concat(Enumerable.Repeat("\U0001F50C", count)), Loads))))),
    ];

    public override string ToString() => Name;

    private static string Circuits => string.Concat(Enumerable.Range(9, More).Select(at => Circuit(at, $"Circuit {at}", Loads)));

    private static string Panel(string above = "", string ofCircuit = "", string between = "", string circuits = "", string below = "", string name = "Well pump") => $$"""
        schedule: 1
        panel: {name: Shed, system: 120/240 V 1ph 3W, spaces: 42, bus: 100 A, main: 60 A}
        {{above}}source: {kind: generator, continuous: 7 kW, surge: 9 kW, surge_time: 5 s, ocpd: 30 A}
        circuits:
          - space: 1
            name: Lights
            breaker: 15 A
            loads: [{kind: lighting, rating: 480 W}]
        {{between}}  - id: well
            space: 5
            name: {{name}}
            breaker: 20 A
            loads: [{kind: motor, rating: 1/2 hp}, {kind: lighting, rating: 90 W}]
        {{ofCircuit}}{{circuits}}{{below}}
        """;

    private static string Circuit(int space, string name, string more) =>
        $"  - id: c{space}\n    space: {space}\n    name: {name}\n    breaker: 20 A\n    {more}\n";

    private static string Lines(int count, Func<int, string> line) => string.Concat(Enumerable.Range(0, count).Select(at => line(at) + "\n"));

    private static string Words(int count, Func<int, string> word) => string.Join(", ", Enumerable.Range(0, count).Select(word));
}
