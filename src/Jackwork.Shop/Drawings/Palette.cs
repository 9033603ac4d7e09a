namespace Jackwork.Shop.Drawings;

/// <summary>The colours of the workshop ledger.</summary>
public static class Palette
{
    /// <summary>Warm paper ground.</summary>
    public static Colour Paper => Colour.Rgb(0xF7F3EA);

    /// <summary>Lines and lettering.</summary>
    public static Colour Ink => Colour.Rgb(0x22282B);

    /// <summary>What turns.</summary>
    public static Colour Brass => Colour.Rgb(0xA97B22);

    /// <summary>Rules that hold.</summary>
    public static Colour Verdigris => Colour.Rgb(0x3F7D6E);

    /// <summary>Secondary lettering.</summary>
    public static Colour Walnut => Colour.Rgb(0x5A4030);

    /// <summary>Faults, and nothing else.</summary>
    public static Colour Fault => Colour.Rgb(0xB0302A);
}
