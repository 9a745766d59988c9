using System.Globalization;

namespace PanelTui.Documents.Reading.Values;

/// <summary>A day as year, month, day: `2026-11-25`.</summary>
internal sealed class DateForm() : ValueForm<DateOnly>("a date as year-month-day, such as 2026-11-25")
{
    private const string Pattern = "yyyy-MM-dd";

    public override Outcome<DateOnly> Read(string text) =>
        DateOnly.TryParseExact(text.Trim(), Pattern, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? Outcome.Of(day)
            : Outcome.Refused<DateOnly>($"is {Quoted.Of(text)}; write {Words}");
}
