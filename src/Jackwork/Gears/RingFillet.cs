using Jackwork.Geometry;

namespace Jackwork.Gears;

/// <summary>The rounding at the bottom of a ring gear's tooth space: an arc tangent to the flank and to the root circle.</summary>
/// <remarks>
/// A rack cannot generate a ring, so the arc takes the place of the trochoid. Its centre lies rho inside the root circle rf
/// and, being rho from the flank, on the parallel involute (see <see cref="Involute"/>) with v = u - rho/rb:
///   rb sqrt(1 + v^2) = rf - rho,   polar angle from the middle of the space  b - rho/rb - (v - atan(v)).
/// Where that angle would be negative the space is too narrow, and rho is the one that makes it zero: a full round bottom.
/// </remarks>
internal readonly struct RingFillet
{
    /// <summary>Halvings in the search for the full round: the bracket shrinks to rounding.</summary>
    private const int Halvings = 60;

    /// <summary>The arc in a space with the given root radius, flank and wanted rounding, mm and rad.</summary>
    public RingFillet(double rootRadius, double baseRadius, double baseAngle, double wanted)
    {
        double RollOf(double rho) => Involute.RollAt(rootRadius - rho, baseRadius);
        double AngleOf(double rho) => baseAngle - rho / baseRadius - Involute.InvOfRoll(RollOf(rho));

        Radius = Math.Min(wanted, rootRadius - baseRadius);
        if (AngleOf(Radius) < 0)
        {
            var (low, high) = (0.0, Radius);
            for (var i = 0; i < Halvings; i++)
            {
                var middle = 0.5 * (low + high);
                (low, high) = AngleOf(middle) < 0 ? (low, middle) : (middle, high);
            }

            Radius = low;
        }

        RollMeet = RollOf(Radius) + Radius / baseRadius;
        CentreAngle = Math.Max(0, AngleOf(Radius));
        Centre = Point2.Origin + (rootRadius - Radius) * Vec2.FromAngle(CentreAngle);
    }

    /// <summary>Radius of the arc, mm; zero where the flank reaches the root circle as a corner.</summary>
    public double Radius { get; }

    /// <summary>Roll angle of the flank where the arc takes over, rad.</summary>
    public double RollMeet { get; }

    /// <summary>Polar angle of the arc's centre from the middle of the space, rad; half the angle of the root arc.</summary>
    public double CentreAngle { get; }

    /// <summary>Centre of the arc in the frame of the space, mm.</summary>
    public Point2 Centre { get; }
}
