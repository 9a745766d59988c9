namespace PanelTui.Engine.Loads;

/// <summary>Products and quotients of what a user wrote, kept where sums of them cannot overflow.</summary>
internal static class Bounded
{
    /// <summary>A gigavolt-ampere: a thousand times what any low-voltage panel carries, so a larger figure is a slip.</summary>
    public const decimal Most = 1_000_000_000;

    public static decimal Product(decimal left, decimal right) =>
        left <= 0 || right <= 0 ? 0
        : (double)left * (double)right >= (double)Most ? Most
        : left * right;

    public static decimal Quotient(decimal dividend, decimal divisor) =>
        dividend <= 0 || divisor <= 0 ? 0
        : (double)dividend / (double)divisor >= (double)Most ? Most
        : dividend / divisor;
}
