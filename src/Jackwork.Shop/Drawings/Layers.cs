namespace Jackwork.Shop.Drawings;

/// <summary>Layer names of cutting drawings. Other programs read them: do not rename.</summary>
public static class Layers
{
    /// <summary>Closed outlines to be cut through.</summary>
    public const string Cut = "cut";

    /// <summary>Round holes, as circles of the finished size.</summary>
    public const string Drill = "drill";

    /// <summary>Names, marks and centres, as single strokes along the tool's middle.</summary>
    public const string Engrave = "engrave";

    /// <summary>The colour each cutting layer is drawn in.</summary>
    public static Colour ColourOf(string layer) => layer switch
    {
        Drill => Palette.Verdigris,
        Engrave => Palette.Walnut,
        _ => Palette.Ink,
    };
}
