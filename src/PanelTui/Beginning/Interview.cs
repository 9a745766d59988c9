namespace PanelTui.Beginning;

/// <summary>Where a person is among the questions. Pure: an answer gives the next state.</summary>
/// <param name="Answers">What has been answered so far.</param>
/// <param name="Refusal">Why the last answer could not be one; the same question stands.</param>
/// <param name="Instead">What that answer may have been meant as: Enter alone takes it.</param>
internal sealed record Interview(Answers Answers, string? Refusal = null, string? Instead = null)
{
    public static readonly Interview Start = new(Answers.None);

    /// <summary>The question that stands; nothing once all are answered.</summary>
    public Question? Current => QuestionBook.All.Skip(Asked).FirstOrDefault(question => question.IsAsked(Answers));

    /// <summary>Its number for the person, from 1.</summary>
    public int Number => Answers.Given.Length + 1;

    /// <summary>What Enter alone answers.</summary>
    public string Usual => Instead ?? Current?.Usual ?? "";

    private int Asked => Answers.Given.IsEmpty ? 0 : QuestionBook.All.IndexOf(Answers.Given[^1].Question) + 1;

    public Interview Answer(string typed)
    {
        var (answer, refusal, instead) = Current!.Read(typed.Trim().Length == 0 ? Instead ?? "" : typed);
        return refusal is null
            ? new Interview(new Answers(Answers.Given.Add((Current, answer))))
            : new Interview(Answers, refusal, instead);
    }

    /// <summary>Back to the question before; at the first nothing changes.</summary>
    public Interview Back() => Answers.Given.IsEmpty ? Start : new Interview(new Answers(Answers.Given.RemoveAt(Answers.Given.Length - 1)));
}
