namespace PanelTui.Tests.Tasks;

/// <summary>The two screens on which every task has to be done.</summary>
internal static class TaskSizes
{
    public static TheoryData<int, int> Both => new() { { 80, 24 }, { 120, 40 } };
}
