namespace PanelTui.Documents; internal static class P;
