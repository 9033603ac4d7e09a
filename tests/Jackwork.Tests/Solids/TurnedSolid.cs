using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Tests.Solids;

/// <summary>A solid with closed-form nearest point, membership and extent along a direction, written apart from the code under test.</summary>
internal abstract record Body(Frame Frame)
{
    public abstract ConvexPiece Piece { get; }

    /// <summary>The point of the solid nearest to <paramref name="p"/>, outside coordinates.</summary>
    public Point3 Nearest(Point3 p) => Frame.Apply(NearestLocal(Frame.Undo(p)));

    /// <summary>Greatest coordinate along a unit vector.</summary>
    public double Extent(Vec3 n) => n.Dot(Frame.Origin - default(Point3)) + ExtentLocal(Frame.Undo(n));

    protected abstract Point3 NearestLocal(Point3 p);

    protected abstract double ExtentLocal(Vec3 n);
}

/// <summary>A frustum about z: radius Low at z = -Half, radius High at z = Half. Equal radii make a cylinder.</summary>
internal sealed record TurnedSolid(Frame Frame, double Low, double High, double Half) : Body(Frame)
{
    public override ConvexPiece Piece => Low == High
        ? ConvexPiece.Cylinder(new(0, 0, -Half), new(0, 0, Half), Low)
        : ConvexPiece.Frustum(new(0, 0, -Half), Low, new(0, 0, Half), High);

    // In the half plane (rho, z) the solid is a quadrilateral with one side on the axis.
    protected override Point3 NearestLocal(Point3 p)
    {
        var rho = Math.Sqrt(p.X * p.X + p.Y * p.Y);
        var q = new Point2(rho, p.Z);
        ReadOnlySpan<Point2> rim = [new(0, -Half), new(Low, -Half), new(High, Half), new(0, Half)];
        if (Math.Abs(p.Z) <= Half && (rim[2] - rim[1]).Cross(q - rim[1]) >= 0)
        {
            return p;
        }

        var best = rim[0];
        for (var i = 0; i < 3; i++)
        {
            var d = rim[i + 1] - rim[i];
            var foot = rim[i] + (d.Dot(d) > 0 ? Math.Clamp((q - rim[i]).Dot(d) / d.Dot(d), 0, 1) : 0) * d;
            best = foot.DistanceTo(q) < best.DistanceTo(q) ? foot : best;
        }

        return rho > 0 ? new(p.X * best.X / rho, p.Y * best.X / rho, best.Y) : new(best.X, 0, best.Y);
    }

    protected override double ExtentLocal(Vec3 n)
    {
        var across = Math.Sqrt(n.X * n.X + n.Y * n.Y);
        return Math.Max(Low * across - Half * n.Z, High * across + Half * n.Z);
    }
}

/// <summary>A box about the origin of its frame.</summary>
internal sealed record BoxSolid(Frame Frame, Vec3 Size) : Body(Frame)
{
    public override ConvexPiece Piece => ConvexPiece.Box(Frame.Identity, Size);

    protected override Point3 NearestLocal(Point3 p) => new(
        Math.Clamp(p.X, -Size.X / 2, Size.X / 2), Math.Clamp(p.Y, -Size.Y / 2, Size.Y / 2), Math.Clamp(p.Z, -Size.Z / 2, Size.Z / 2));

    protected override double ExtentLocal(Vec3 n) => 0.5 * (Math.Abs(n.X) * Size.X + Math.Abs(n.Y) * Size.Y + Math.Abs(n.Z) * Size.Z);
}
