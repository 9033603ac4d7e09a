namespace Jackwork.Gears;

/// <summary>What can be wrong with a pair of gears.</summary>
public enum MeshFault
{
    /// <summary>Contact ends before the next pair of teeth takes over. Measured and limit: contact ratio.</summary>
    ContactRatioBelowOne,

    /// <summary>The flanks overlap. Measured and limit: normal backlash, mm.</summary>
    NoBacklash,

    /// <summary>This gear's tip reaches the other's root circle. Measured and limit: tip clearance, mm.</summary>
    NoTipClearance,

    /// <summary>The mate's tip calls for flank where this gear has its fillet. Measured: radius called for, limit: form radius,
    /// mm.</summary>
    TipMeetsFillet,

    /// <summary>Undercut has taken flank that the mate's tip would use. Measured: radius called for, limit: form radius, mm.</summary>
    UndercutShortensContact,

    /// <summary>The mate's tip calls for flank inside this gear's base circle, where there is none. Measured: position on the line of
    /// action, limit: 0, mm.</summary>
    TipBeyondBase,

    /// <summary>This gear's flanks meet below its nominal tip. Measured: pointed radius, limit: nominal tip radius, mm.</summary>
    PointedTip,

    /// <summary>Ring: the pinion's tip strikes the ring's on the way out of mesh. Measured and limit: gap along the ring's tip circle,
    /// mm.</summary>
    TipsCollide,

    /// <summary>Ring: the pinion can only be put in endways. Measured and limit: gap across the teeth when drawn out sideways,
    /// mm.</summary>
    NoRadialAssembly,
}

/// <summary>One thing wrong with a pair of gears.</summary>
/// <param name="Fault">What.</param>
/// <param name="Gear">On which: 1, 2, or 0 for both.</param>
/// <param name="Measured">The figure found, in the unit the fault names.</param>
/// <param name="Limit">The figure it must not pass.</param>
public readonly record struct MeshFinding(MeshFault Fault, int Gear, double Measured, double Limit);
