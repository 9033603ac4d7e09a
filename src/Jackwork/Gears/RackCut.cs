using Jackwork.Geometry;

namespace Jackwork.Gears;

/// <summary>What a rolling rack leaves at the foot of an outside gear's tooth: the trochoid of the rack's rounded corner.</summary>
/// <remarks>
/// The pitch line of the rack rolls on the reference circle r. In the rack's frame (x along the pitch line from the middle of
/// the cutter's tooth, y outwards from the pitch line) the rounding rho of the corner has its centre at (x_c, y_c):
///   y_c = (shift - hf) m + rho,   x_c = pi m/4 + thinning/2 - (hf m - rho) tan(alpha) - rho/cos(alpha).
/// Where the rounding cuts, its normal n = (sin(psi), -cos(psi)) passes through the pitch point (law of gearing):
///   r phi = -y_c tan(psi) - x_c,    P = (0, r) + mu n,   mu = rho - y_c/cos(psi),
/// P being turned by the roll phi into the gear's frame, in which its tangent is (cos(psi), sin(psi)) turned alike. The
/// speed along it, rho - mu y_c / (r cos(psi)^2), and dR/dpsi, proportional to r sin(psi), are positive, so the trochoid
/// rises from the root circle (psi = 0) to the end of the straight flank (psi = pi/2 - alpha). There it meets the involute
/// with a common tangent at the roll angle
///   u = (r sin(alpha) - rho + y_c/sin(alpha)) / rb.
/// Where that is negative the corner has cut into the flank (undercut), and the two meet at an angle further out.
/// Sources: F. L. Litvin and A. Fuentes, Gear Geometry and Applied Theory, 2nd ed., ch. 6 (law of gearing, envelopes), from memory;
/// the closed form in psi is ours.
/// </remarks>
internal readonly struct RackCut
{
    /// <summary>Halvings in the search for the place where trochoid and flank cross: the bracket shrinks to rounding.</summary>
    private const int Halvings = 60;

    private readonly double r;
    private readonly double rb;
    private readonly double baseAngle;
    private readonly double turn;
    private readonly double rho;
    private readonly double xc;
    private readonly double yc;

    /// <summary>The cut at the counter-clockwise side of the tooth centred on the x axis; virtual wheels have no whole number of teeth.</summary>
    public RackCut(double module, double teeth, double shift, double thinning, BasicRack rack, double baseAngle)
    {
        var alpha = rack.PressureAngle;
        r = 0.5 * module * teeth;
        rb = r * Math.Cos(alpha);
        this.baseAngle = baseAngle;
        turn = Math.PI / teeth - Math.PI / 2;
        rho = rack.FilletRadius * module;
        yc = (shift - rack.Dedendum) * module + rho;
        xc = Math.PI * module / 4 + thinning / 2 - (rack.Dedendum * module - rho) * Math.Tan(alpha) - rho / Math.Cos(alpha);
        PsiEnd = Math.PI / 2 - alpha;
        var u = (r * Math.Sin(alpha) - rho + yc / Math.Sin(alpha)) / rb;
        IsUndercut = u < 0;
        (PsiMeet, RollMeet) = (PsiEnd, Math.Max(u, 0));
        if (IsUndercut)
        {
            PsiMeet = Crossing();
            RollMeet = Involute.RollAt(RadiusAt(PsiMeet), rb);
        }
    }

    /// <summary>psi at the end of the cutter's straight flank, rad.</summary>
    public double PsiEnd { get; }

    /// <summary>Whether the corner cuts away involute flank.</summary>
    public bool IsUndercut { get; }

    /// <summary>psi at which trochoid and flank meet, rad.</summary>
    public double PsiMeet { get; }

    /// <summary>Roll angle of the flank where they meet, rad.</summary>
    public double RollMeet { get; }

    /// <summary>Half the angle of the root arc, rad, seen from the gear's axis.</summary>
    public double RootHalfAngle => xc / r;

    /// <summary>The trochoid at <paramref name="psi"/>, running outwards, in the frame of the tooth.</summary>
    public OutlinePoint At(double psi)
    {
        var phi = (-yc * Math.Tan(psi) - xc) / r + turn;
        var (s, c) = Math.SinCos(psi);
        var mu = rho - yc / c;
        return new OutlinePoint(new(mu * s, r - mu * c), new(c, s)).Turned(phi);
    }

    /// <summary>Radius of the trochoid at <paramref name="psi"/>, mm; rises with psi.</summary>
    public double RadiusAt(double psi)
    {
        var c = Math.Cos(psi);
        var mu = rho - yc / c;
        return Math.Sqrt(r * r - 2 * r * mu * c + mu * mu);
    }

    /// <summary>psi at which the trochoid reaches <paramref name="radius"/>, rad, within 0 to <see cref="PsiEnd"/>.</summary>
    public double PsiAt(double radius)
    {
        var (low, high) = (0.0, PsiEnd);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = RadiusAt(middle) < radius ? (middle, high) : (low, middle);
        }

        return high;
    }

    // Between the base circle, where the trochoid lies inside the tooth, and its end, where it lies outside.
    private double Crossing()
    {
        var (low, high) = (PsiAt(rb), PsiEnd);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = 0.5 * (low + high);
            var flank = baseAngle - Involute.InvOfRoll(Involute.RollAt(RadiusAt(middle), rb));
            (low, high) = At(middle).Point.FromOrigin.Angle < flank ? (middle, high) : (low, middle);
        }

        return high;
    }
}
