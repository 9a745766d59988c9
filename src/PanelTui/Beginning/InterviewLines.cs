using System.Globalization;
using PanelTui.Presentation;

namespace PanelTui.Beginning;

/// <summary>Asks the questions line by line, on any terminal and for any screen reader.</summary>
internal static class InterviewLines
{
    private const string Back = "<";

    /// <summary>The answers; nothing where the person gave up.</summary>
    public static Answers? Ask(TextReader input, TextWriter output)
    {
        output.WriteLine("A few questions make the schedule. Enter takes what stands in brackets,");
        output.WriteLine("< goes back, Ctrl-D gives up. Everything can be changed later.");
        var interview = Interview.Start;
        while (interview.Current is { } question)
        {
            if (interview.Refusal is null) Show(question, interview.Number, output);
            else Refuse(interview.Refusal, output);
            output.Write($"   [{interview.Usual}] > ");
            if (input.ReadLine() is not { } typed) return null;
            interview = typed.Trim() == Back ? interview.Back() : interview.Answer(typed);
        }

        return interview.Answers;
    }

    private static void Refuse(string refusal, TextWriter output)
    {
        foreach (var line in Wrapped.Of(DisplayText.Clean($"! {refusal}"), 76)) output.WriteLine($"   {line}");
    }

    private static void Show(Question question, int number, TextWriter output)
    {
        output.WriteLine();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{number,2} {question.Text}"));
        foreach (var line in Wrapped.Of(question.Hint, 74)) output.WriteLine($"   {line}");
        var width = question.Choices.Select(choice => choice.Word.Length).DefaultIfEmpty(0).Max();
        for (var index = 0; index < question.Choices.Length; index++)
        {
            var (word, meaning) = question.Choices[index];
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"   {index + 1,2}  {word.PadRight(width)}  {meaning}").TrimEnd());
        }
    }
}
