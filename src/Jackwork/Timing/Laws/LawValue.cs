namespace Jackwork.Timing.Laws;

/// <summary>A motion at one instant of its own time t, which runs from 0 to 1 over the move.</summary>
/// <remarks>
/// For a normalised law all three are pure numbers. A lift h over a shaft angle b has the position h S, the speed
/// h V / b and the acceleration h A / b^2. <c>default</c> is at the start and at rest.
/// </remarks>
/// <param name="S">Position: a share of the lift for a law, the member's unit for a <see cref="Quintic"/>.</param>
/// <param name="V">First derivative with respect to t, same unit.</param>
/// <param name="A">Second derivative with respect to t, same unit.</param>
public readonly record struct LawValue(double S, double V, double A);
