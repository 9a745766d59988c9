using System.Collections.Immutable;

namespace PanelTui.Editing;

/// <summary>Why a form was not taken, and which field is to blame.</summary>
/// <param name="Instead">What the text may have been meant as: it is put into the field, and Enter takes it.</param>
internal sealed record FormRefusal(int Field, string Reason, string? Instead = null);

/// <summary>A form before it is on the screen: its fields, and what becomes of their texts.</summary>
internal abstract class Form
{
    public abstract ImmutableArray<FormField> Fields { get; }

    /// <summary>Whether sending it changes the schedule.</summary>
    public virtual bool Changes => true;

    /// <summary>Whether Enter goes on to the next field, and sends the form from the last one.</summary>
    public virtual bool StepByStep => false;

    /// <summary>What the foot calls it that Tab takes the form and goes on to the next; nothing where it does not.</summary>
    public virtual string? OnwardByTab => null;

    /// <summary>What is wrong with one text by itself, before the form goes on from it.</summary>
    public virtual FormRefusal? WhyNot(int field, string text) => null;

    /// <summary>Does what the form is for; nothing on success.</summary>
    public abstract FormRefusal? Send(Session session, ImmutableArray<string> texts);

    /// <summary>Shows in the figures what sending would do; what cannot be sent yet shows nothing.</summary>
    public virtual void Preview(Session session, ImmutableArray<string> texts)
    {
    }
}
