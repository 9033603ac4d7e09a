using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace Jackwork.Tests.Cams;

/// <summary>
/// A cam worked out another way: points of the follower are moved in space by turning or sliding them (Rodrigues' formula),
/// turned back with the shaft, and the cam is what the other library leaves of a plate when the follower has passed
/// everywhere.
/// </summary>
internal sealed class Inversion(CamRig rig, Proof proof)
{
    private readonly Probe probe = proof.Motion.Probe();
    private readonly Joint shaft = proof.Machine.Members[proof.Cams[0].Shaft].Joint;
    private readonly Joint joint = proof.Machine.Members[proof.Cams[0].FollowerMember].Joint;

    private Cam Cam => proof.Cams[0];

    private double PerTurn => 2 * Math.PI / Math.Abs(proof.Machine.Turns[Cam.Shaft]!.Value.Value);

    /// <summary>A point of the follower as drawn, seen from the cam at a crank angle, with the follower moved on by <paramref name="more"/> rad or mm.</summary>
    public Point2 Seen(Point3 drawn, double crank, double more = 0)
    {
        probe.Go(crank);
        var q = probe.States[Cam.FollowerMember].Q.Value + more;
        return Seen(drawn, q, probe.States[Cam.Shaft].Q.Value, Cam.Follower.SetOver);
    }

    private Point2 Seen(Point3 drawn, double q, double t, double setOver)
    {
        // A lever is set over as an angle in the cam's plane, against its own sense where its axis points against the shaft's.
        var moved = joint.Kind == JointKind.Slide
            ? drawn + (q + setOver) * joint.Along
            : Turned(drawn, joint, q + Math.Sign(joint.Along.Dot(shaft.Along)) * setOver);
        var back = Turned(moved, shaft, -t) - shaft.Through;
        var up = shaft.Along.AnyPerpendicular();
        return new(back.Dot(up.Cross(shaft.Along)), back.Dot(up));
    }

    private static Point3 Turned(Point3 p, Joint axis, double angle)
    {
        var v = p - axis.Through;
        var k = axis.Along;
        return axis.Through + Math.Cos(angle) * v + Math.Sin(angle) * k.Cross(v) + (1 - Math.Cos(angle)) * k.Dot(v) * k;
    }

    /// <summary>The cam that lets the follower pass, as a polygon.</summary>
    public Polygon Cut(int positions) => rig.Touch == "flat" ? CutByFaces(positions) : CutByRollers(positions);

    // The positions at corners of the chart are put in as well, since each leaves a whole straight edge or the roller's rim.
    private IEnumerable<double> Cranks(int positions) => Enumerable.Range(0, positions).Select(i => PerTurn * i / positions).Concat(Cam.Corners).Order();

    private Polygon CutByRollers(int positions)
    {
        var path = Cranks(positions).Select(c => Seen(rig.Middle, c)).Select(p => new Coordinate(p.X, p.Y)).ToList();
        path.Add(path[0].Copy());
        var swept = new LineString([.. path]).Buffer(rig.Size / 2, new BufferParameters(128) { SimplifyFactor = 1e-7 });
        var plate = new Point(0, 0).Buffer(2 * path.Max(p => Math.Sqrt(p.X * p.X + p.Y * p.Y)));
        return Part(plate.Difference(swept));
    }

    private Polygon CutByFaces(int positions)
    {
        // Sutherland and Hodgman's clipping, one half-plane after the other.
        var ring = new List<Point2> { new(-500, -500), new(500, -500), new(500, 500), new(-500, 500) };

        foreach (var crank in Cranks(positions))
        {
            var a = Seen(rig.Middle, crank);
            var n = (Seen(rig.AlongFace, crank) - a).Unit().Left;
            n = n.Dot(a.FromOrigin) < 0 ? -n : n;
            var next = new List<Point2>(ring.Count + 1);
            for (var k = 0; k < ring.Count; k++)
            {
                var (p, q) = (ring[k], ring[(k + 1) % ring.Count]);
                var (dp, dq) = ((p - a).Dot(n), (q - a).Dot(n));
                if (dp <= 0)
                {
                    next.Add(p);
                }

                if (dp < 0 != dq < 0 && dp != dq)
                {
                    next.Add(p + dp / (dp - dq) * (q - p));
                }
            }

            ring = next;
        }

        return Polygon(ring);
    }

    public static Polygon Polygon(IEnumerable<Point2> points)
    {
        var ring = points.Select(p => new Coordinate(p.X, p.Y)).ToList();
        ring.Add(ring[0].Copy());
        return new(new LinearRing([.. ring]));
    }

    private static Polygon Part(NetTopologySuite.Geometries.Geometry g)
    {
        var centre = new Point(0, 0);
        return Enumerable.Range(0, g.NumGeometries).Select(i => (Polygon)g.GetGeometryN(i)).First(p => p.Contains(centre));
    }

    /// <summary>Greatest distance of either boundary from the other, mm.</summary>
    public static double Apart(Outline outline, Polygon polygon)
    {
        var ours = outline.Flatten(1e-4).Select(p => new Point(p.X, p.Y)).ToList();
        var ring = new NetTopologySuite.Operation.Distance.IndexedFacetDistance(polygon.ExteriorRing);
        return Math.Max(ours.Max(ring.Distance), polygon.ExteriorRing.Coordinates.Max(c => outline.DistanceTo(new(c.X, c.Y))));
    }

    /// <summary>
    /// Where the follower comes to rest on a polygon at a crank angle, as a distance from where it should be, rad or mm:
    /// it is brought in from outside in small steps until it would enter, then halved.
    /// </summary>
    public double Rest(Polygon polygon, double crank)
    {
        probe.Go(crank);
        var q = probe.States[Cam.FollowerMember].Q.Value;
        var step = (joint.Kind == JointKind.Slide ? 0.1 : 0.1 / (rig.At - rig.Pivot!.Value).Length) * Outward(q, crank);
        var ring = new NetTopologySuite.Operation.Distance.IndexedFacetDistance(polygon.ExteriorRing);
        bool Enters(double more)
        {
            var p = Seen(rig.Middle, crank, more);
            if (rig.Touch != "flat")
            {
                var at = new Point(p.X, p.Y);
                return ring.Distance(at) < rig.Size / 2 || polygon.Contains(at);
            }

            var n = (Seen(rig.AlongFace, crank, more) - p).Unit().Left;
            n = n.Dot(p.FromOrigin) < 0 ? -n : n;
            return polygon.ExteriorRing.Coordinates.Any(c => (new Point2(c.X, c.Y) - p).Dot(n) > 0);
        }

        var (good, bad) = (60 * step, 59 * step);
        while (!Enters(bad))
        {
            (good, bad) = (bad, bad - step);
        }

        while (Math.Abs(good - bad) > 1e-9)
        {
            var middle = (good + bad) / 2;
            (good, bad) = Enters(middle) ? (good, middle) : (middle, bad);
        }

        return good;
    }

    // Sign of the coordinate that takes the follower away from the shaft.
    private double Outward(double q, double crank)
    {
        const double little = 1e-4;
        double Distance(double more)
        {
            if (rig.Touch != "flat")
            {
                return Seen(rig.Middle, crank, more).FromOrigin.Length;
            }

            var p = Seen(rig.Middle, crank, more);
            return Math.Abs((Seen(rig.AlongFace, crank, more) - p).Unit().Cross(p.FromOrigin));
        }

        return Math.Sign(Distance(little) - Distance(-little));
    }
}
