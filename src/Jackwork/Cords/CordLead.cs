using Jackwork.Geometry;

namespace Jackwork.Cords;

/// <summary>What a cord is led by at a place.</summary>
public enum LeadKind
{
    /// <summary>An eye: a hole that the cord runs through, or at an end the one that it is tied to.</summary>
    Eye,

    /// <summary>A pulley that turns freely.</summary>
    Pulley,

    /// <summary>A drum that winds the cord; only at an end.</summary>
    Drum,
}

/// <summary>A place that a cord is led by, as drawn.</summary>
/// <param name="Kind">What stands there.</param>
/// <param name="Member">Index of the member that it is on, or the case.</param>
/// <param name="At">The middle of the eye, or the axis of pulley or drum in the plane of the cord, mm.</param>
/// <param name="Radius">Radius at which the cord's middle line lies on it, mm; 0 for an eye.</param>
/// <param name="Way">Which way round the cord goes from its first end on: +1 counter-clockwise about the normal of its plane, -1 clockwise; 0 for an eye.</param>
/// <param name="Turns">Turns wound on a drum as drawn; else 0.</param>
public readonly record struct CordLead(LeadKind Kind, int Member, Point3 At, double Radius, int Way, double Turns)
{
    /// <summary>Way times radius, mm.</summary>
    public double Side => Way * Radius;
}
