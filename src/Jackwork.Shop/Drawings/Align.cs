namespace Jackwork.Shop.Drawings;

/// <summary>Which part of a line of lettering, taken along its reading direction, sits at its anchor point.</summary>
public enum Align
{
    /// <summary>The left edge of the ink of the first letter.</summary>
    Left,

    /// <summary>The middle of the line.</summary>
    Centre,

    /// <summary>The right edge of the ink of the last letter.</summary>
    Right,
}

/// <summary>Which height of a line of lettering sits at its anchor point.</summary>
public enum Level
{
    /// <summary>The foot of the capitals.</summary>
    Base,

    /// <summary>Half the height of the capitals.</summary>
    Middle,

    /// <summary>The top of the capitals.</summary>
    Top,
}
