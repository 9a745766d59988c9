namespace PanelTui.Terminal;

/// <summary>The 256 colours of xterm: sixteen of the palette, a cube of 6 x 6 x 6, and 24 greys.</summary>
/// <remarks>Levels of the cube are 0, 95, 135, 175, 215, 255; the greys run from 8 in steps of 10 (xterm, 256colres.pl).</remarks>
internal static class ColourCube
{
    /// <summary>The number, 16 to 255, of the colour nearest to the one given.</summary>
    public static int Nearest(int red, int green, int blue)
    {
        var (r, g, b) = (Step(red), Step(green), Step(blue));
        var grey = Math.Clamp((((red + green + blue) / 3) - 3) / 10, 0, 23);
        var shade = 8 + (10 * grey);
        var toCube = Square(red - Level(r)) + Square(green - Level(g)) + Square(blue - Level(b));
        var toGrey = Square(red - shade) + Square(green - shade) + Square(blue - shade);
        return toGrey < toCube ? 232 + grey : 16 + (36 * r) + (6 * g) + b;
    }

    private static int Step(int value) => value < 48 ? 0 : value < 115 ? 1 : (value - 35) / 40;

    private static int Level(int step) => step == 0 ? 0 : 55 + (40 * step);

    private static int Square(int value) => value * value;
}
