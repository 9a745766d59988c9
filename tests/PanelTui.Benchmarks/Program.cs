using System.Globalization;
using BenchmarkDotNet.Running;

namespace PanelTui.Benchmarks;

internal static class Program
{
    private static void Main(string[] args)
    {
        if (args is ["balance", ..]) BalanceSideBySide.Run(args is [_, "--solver"]);
        else if (args is ["large", ..]) LargeFiles.Run(args.ElementAtOrDefault(1) ?? "", int.Parse(args.ElementAtOrDefault(2) ?? "1", CultureInfo.InvariantCulture), args.ElementAtOrDefault(3) ?? "");
        else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
    }
}
