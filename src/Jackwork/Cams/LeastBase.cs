namespace Jackwork.Cams;

/// <summary>What keeps a cam's base circle from being smaller.</summary>
public enum BaseBound
{
    /// <summary>The hub, with the wood that must stand round it.</summary>
    Hub,

    /// <summary>The follower, which can't be set nearer.</summary>
    Reach,

    /// <summary>The pressure angle.</summary>
    PressureAngle,

    /// <summary>The sharpest place of the outline that bends outward.</summary>
    Nose,
}

/// <summary>The least base circle that keeps a cam within its limits.</summary>
/// <param name="Radius">Its radius, mm, to a hundredth.</param>
/// <param name="Bound">What does not hold a little below it.</param>
public readonly record struct LeastBase(double Radius, BaseBound Bound)
{
    /// <summary>How far below the least radius the cam is looked at to see what fails there, mm: more than the search's hundredth, less than a maker cares for.</summary>
    internal const double Beside = 0.03;
}
