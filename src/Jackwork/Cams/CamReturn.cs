namespace Jackwork.Cams;

/// <summary>What brings the follower of a positive cam back: the side that it touches while the first side lets it go.</summary>
/// <remarks>
/// The first side is the plate cam itself: outline X - R n, from the pitch curve X and its normal n (see
/// <see cref="RollerFollower"/>). With clearance c the other side is, for
/// <para>a groove, its outer wall X + (R + c) n; its radius of curvature is r + R + c, r that of the pitch curve (positive
/// convex), so that a hollow of the pitch curve with -r &lt; R + c is undercut;</para>
/// <para>conjugate discs, the plate cam of the second follower for the same motion, its roller taken as R + c;</para>
/// <para>a yoke, the face at the breadth b + c from the first, b the disc's greatest breadth (see <see cref="DiscBreadth"/>).</para>
/// At reversal the follower goes from one side to the other, c / cos p along its motion in a groove, p the pressure angle.
/// H. A. Rothbart (ed.), Cam Design Handbook, chapter 1 (positive-drive cams); R. L. Norton, Design of Machinery, section 8.1
/// (form-closed cams) (both from memory).
/// </remarks>
/// <param name="Clearance">Clearance between this side and the follower while that rests on the first, mm.</param>
public abstract record CamReturn(double Clearance)
{
    /// <summary>The trade's words for the cam.</summary>
    public abstract string Word { get; }

    /// <summary>The follower's contact with this side, by a calculation of its own.</summary>
    /// <param name="cam">The cam whose other side this is.</param>
    internal abstract Rolling Contact(Cam cam);

    /// <summary>Whether it stops the follower on its way away from the first side, at a coordinate (rad or mm).</summary>
    /// <param name="cam">The cam.</param>
    /// <param name="q">The follower's coordinate.</param>
    internal virtual bool Stops(Cam cam, double q) => true;
}

/// <summary>The outer wall of a groove.</summary>
/// <param name="Clearance">By how much the groove is wider than the roller, mm.</param>
/// <param name="Profile">The wall, sampled; its normals point away from the groove.</param>
/// <param name="Loop">The hole that is cut.</param>
/// <param name="DiscRadius">Radius of the round disc that it is cut in, mm.</param>
/// <param name="Back">Thickness of the back that holds core and rim, mm.</param>
public sealed record GrooveWall(double Clearance, CamProfile Profile, CutLoop Loop, double DiscRadius, double Back) : CamReturn(Clearance)
{
    /// <inheritdoc/>
    public override string Word => "groove cam";

    internal override Rolling Contact(Cam cam) => Rolling.Within(Loop.AsCut, (RollerFollower)cam.Follower);
}

/// <summary>The second disc of a conjugate pair.</summary>
/// <param name="Clearance">Clearance of its follower, mm.</param>
/// <param name="Follower">Its follower, as it is.</param>
/// <param name="Profile">Its outline, sampled.</param>
/// <param name="Loop">Its outline, as it is cut.</param>
/// <param name="BaseRadius">Radius of its base circle, mm.</param>
/// <param name="Station">How far along the shaft's axis, from the point that the design gives for it, its middle lies, mm.</param>
public sealed record SecondDisc(double Clearance, Follower Follower, CamProfile Profile, CutLoop Loop, double BaseRadius, double Station) : CamReturn(Clearance)
{
    /// <inheritdoc/>
    public override string Word => "conjugate cams";

    internal override Rolling Contact(Cam cam) => Rolling.On(Loop.AsCut, Follower);

    internal override bool Stops(Cam cam, double q) => Follower.Outward(q) == -cam.Follower.Outward(q);
}

/// <summary>The second face of a yoke.</summary>
/// <param name="Clearance">By how much the yoke is wider than the disc's greatest breadth, mm.</param>
/// <param name="Face">The face.</param>
/// <param name="Profile">The disc as the face touches it, sampled.</param>
/// <param name="Breadth">The disc's breadth.</param>
public sealed record YokeFace(double Clearance, Follower Face, CamProfile Profile, DiscBreadth Breadth) : CamReturn(Clearance)
{
    /// <inheritdoc/>
    public override string Word => "yoke cam";

    /// <summary>Distance of the faces from each other, mm.</summary>
    public double Opening => Breadth.Most + Clearance;

    internal override Rolling Contact(Cam cam) => Rolling.On(cam.AsCut, Face);
}
