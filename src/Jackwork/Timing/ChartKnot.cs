namespace Jackwork.Timing;

/// <summary>A shaft angle at which two pieces join, or at which a law's acceleration jumps within a piece.</summary>
/// <param name="Angle">Shaft angle, rad, in [0, 2 pi).</param>
/// <param name="VelocityJump">Speed after less speed before, rad or mm per rad of the shaft; 0 where it runs through.</param>
/// <param name="AccelerationJump">Acceleration after less before, rad or mm per rad^2 of the shaft; 0 where it runs through.</param>
public readonly record struct ChartKnot(double Angle, double VelocityJump, double AccelerationJump)
{
    /// <summary>Whether the speed jumps: a knock, at any speed of the handle.</summary>
    public bool HasVelocityJump => VelocityJump != 0;

    /// <summary>Whether the acceleration jumps: a jolt, harmless at low speed.</summary>
    public bool HasAccelerationJump => AccelerationJump != 0;
}

/// <summary>From which side a knot is looked at.</summary>
public enum Side
{
    /// <summary>As the shaft angle rises towards the knot.</summary>
    Before,

    /// <summary>As the shaft angle leaves the knot.</summary>
    After,
}
