using PanelTui.Engine.Codes.Tables;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>NEC Table 430.7(B). Seen: public copies of the table and an equipment manual.</summary>
public class LockedRotorTests
{
    [Fact]
    public void The_letters_leave_out_I_O_and_Q() =>
        string.Concat(LockedRotor.Rows.Select(row => row.Letter)).ShouldBe("ABCDEFGHJKLMNPRSTUV");

    [Theory]
    [InlineData('A', 0, 3.14)]
    [InlineData('G', 5.6, 6.29)]
    [InlineData('K', 8.0, 8.99)]
    [InlineData('M', 10.0, 11.19)]
    [InlineData('U', 20.0, 22.39)]
    public void A_letter_has_the_band_that_is_printed(char letter, double least, double most)
    {
        var row = LockedRotor.Find(letter)!.Value;
        ((double)row.Least, (double)row.Most!.Value).ShouldBe((least, most));
    }

    [Fact]
    public void The_bands_follow_one_another_and_the_last_is_open()
    {
        foreach (var (row, next) in LockedRotor.Rows.Zip(LockedRotor.Rows.Skip(1)).AtLeastOne())
            next.Least.ShouldBe(row.Most!.Value + 0.01m);
        LockedRotor.Rows[^1].ShouldBe(new LockedRotorRow('V', 22.4m, null));
        LockedRotor.Rows[^1].Reckoned.ShouldBe(22.4m);
    }

    [Fact]
    public void A_letter_that_is_none_is_not_found() => LockedRotor.Find('Q').ShouldBeNull();
}
