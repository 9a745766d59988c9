using System.Collections;
using System.Reflection;
using System.Text;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>
/// Every fact of a schedule in words, so that two schedules can be compared; lists inside records would not be.
/// </summary>
internal static class Facts
{
    public static string Of(object? value)
    {
        var facts = new StringBuilder();
        Append(facts, value, 0);
        return facts.ToString();
    }

    private static void Append(StringBuilder facts, object? value, int depth)
    {
        switch (value)
        {
            case null:
                facts.Append("nothing");
                break;
            case IEnumerable list and not string:
                facts.Append('[');
                foreach (var entry in list) Append(facts.Append(' '), entry, depth + 1);
                facts.Append(']');
                break;
            case not null when HasFacts(value.GetType()) && depth < 8:
                facts.Append(value.GetType().Name).Append('{');
                foreach (var fact in FactsOf(value.GetType()))
                    Append(facts.Append(fact.Name).Append('='), fact.GetValue(value), depth + 1);
                facts.Append('}');
                break;
            default:
                facts.Append(value).Append(';');
                break;
        }
    }

    private static bool HasFacts(Type type) => 
        type is { IsClass: true, Namespace: "PanelTui.Engine.Panels" } && type.Name != "PanelSystem";

    private static IEnumerable<PropertyInfo> FactsOf(Type type) => type
        .GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(fact => fact.CanWrite)
        .Where(fact => fact.GetIndexParameters().Length == 0);
}
