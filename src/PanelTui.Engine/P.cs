namespace PanelTui.Engine; internal static class P;
