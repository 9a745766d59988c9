namespace PanelTui.Engine.Balance;

/// <summary>Which figure is to be evened out over the legs.</summary>
public abstract record BalanceBy
{
    /// <summary>Everything that is connected, in VA.</summary>
    public static readonly BalanceBy Connected = new ByConnected();

    /// <summary>The calculated load of the method that the schedule names, in VA.</summary>
    public static readonly BalanceBy Demand = new ByDemand();

    /// <summary>The running watts of whichever scenario is the most uneven.</summary>
    public static readonly BalanceBy Worst = new ByWorst();

    private protected BalanceBy()
    {
    }

    /// <summary>The running watts of one scenario, by its name.</summary>
    public static BalanceBy Scenario(string name) => new ByScenario(name);

    internal sealed record ByConnected : BalanceBy
    {
        public override string ToString() => "connected";
    }

    internal sealed record ByDemand : BalanceBy
    {
        public override string ToString() => "demand";
    }

    internal sealed record ByWorst : BalanceBy
    {
        public override string ToString() => "worst";
    }

    internal sealed record ByScenario(string Name) : BalanceBy
    {
        public override string ToString() => $"scenario {Name}";
    }
}
