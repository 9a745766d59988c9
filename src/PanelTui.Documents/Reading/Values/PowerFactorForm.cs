using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>A power factor, above 0 and at most 1.</summary>
internal sealed class PowerFactorForm() : ValueForm<PowerFactor>("a number above 0 and at most 1, such as 0.85")
{
    public override Outcome<PowerFactor> Read(string text)
    {
        var number = WrittenNumber.Read(text.Trim(), "", fractions: false);
        return number is { Succeeded: true, Value: > 0 and <= 1 }
            ? Outcome.Of(new PowerFactor(number.Value))
            : Outcome.Refused<PowerFactor>($"is {Quoted.Of(text)}; a power factor is {Words}");
    }
}
