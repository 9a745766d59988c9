using BenchmarkDotNet.Running;

namespace PanelTui.Benchmarks;

internal static class Program
{
    private static void Main(string[] args)
    {
        if (args is ["balance", ..]) BalanceSideBySide.Run(args is [_, "--solver"]);
        else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
    }
}
