using Jackwork.Geometry;
using Jackwork.Parts;

namespace Jackwork.Comparing;

/// <summary>A part's shape and place as points, mm, and figures, in an order that follows how it is made: two parts made alike have them in the same order.</summary>
internal sealed record PartPoints(Point3[] Points, double[] Figures)
{
    /// <summary>The points and figures of a part: of its mesh, of its plates where it has any, else of its pieces.</summary>
    public static PartPoints Of(Part part)
    {
        var (points, figures) = (new List<Point3>(), new List<double>());
        if (part.Mesh is { } mesh)
        {
            return new([.. mesh.Points], [.. mesh.Triangles.SelectMany(t => (double[])[t.A, t.B, t.C])]);
        }

        foreach (var plate in part.Plates)
        {
            foreach (var segment in plate.Holes.Prepend(plate.Rim).SelectMany(o => o.Segments))
            {
                // An arc is told by its ends and its middle.
                points.AddRange(from z in (double[])[plate.Bottom, plate.Top] from p in (Point2[])[segment.Start, segment.PointAt(0.5)] select plate.Frame.Apply(new Point3(p.X, p.Y, z)));
            }
        }

        if (points.Count == 0)
        {
            foreach (var piece in part.Pieces)
            {
                figures.AddRange([piece.Margin, .. piece.Radii]);
                foreach (var c in piece.Centres)
                {
                    points.AddRange([default(Point3) + c, default(Point3) + (c + piece.Sweep), default(Point3) + (c + piece.DiscAxis)]);
                }
            }
        }

        return new([.. points], [.. figures]);
    }

    /// <summary>Where a part's first plate stands: the middle and the directions of its frame, at its lower face, whatever its outline is.</summary>
    public static PartPoints PlateOf(Part part)
    {
        var (frame, z) = (part.Plates[0].Frame, part.Plates[0].Bottom);
        return new([frame.Apply(new Point3(0, 0, z)), frame.Apply(new Point3(1, 0, z)), frame.Apply(new Point3(0, 1, z))], []);
    }

    /// <summary>How far the point lies that has moved farthest, mm; for the same number of points.</summary>
    public double Farthest(PartPoints other) => Points.Zip(other.Points, (p, q) => p.DistanceTo(q)).DefaultIfEmpty(0).Max();

    /// <summary>Whether one can be brought onto the other by moving and turning it, within <see cref="Sameness.Mm"/>.</summary>
    /// <remarks>Distances from four points that span space, or as many as there are, fix every other point; the sense of the four tells a shape from its mirror image.</remarks>
    public bool IsCongruent(PartPoints other)
    {
        if (Points.Length != other.Points.Length || Figures.Length != other.Figures.Length || Figures.Zip(other.Figures).Any(f => Math.Abs(f.First - f.Second) > Sameness.Mm))
        {
            return false;
        }

        if (Farthest(other) <= Sameness.Mm || Points.Length == 0)
        {
            return true;
        }

        var marks = Marks();
        return marks.All(k => Points.Zip(other.Points).All(p => Math.Abs(p.First.DistanceTo(Points[k]) - p.Second.DistanceTo(other.Points[k])) <= Sameness.Mm))
            && (Math.Abs(Height(Points, marks)) <= Sameness.Mm || Height(Points, marks) * Height(other.Points, marks) > 0);
    }

    // The first point, the one farthest from it, the one farthest from their line, and the one farthest from the plane of the three.
    private int[] Marks()
    {
        var p = Points;
        int Most(Func<Point3, double> of) => Enumerable.Range(0, p.Length).MaxBy(i => of(p[i]));
        var far = Most(x => x.DistanceTo(p[0]));
        var off = Most(x => (x - p[0]).Cross(p[far] - p[0]).Length);
        var normal = (p[far] - p[0]).Cross(p[off] - p[0]);
        return [0, far, off, Most(x => Math.Abs((x - p[0]).Dot(normal)))];
    }

    // How high the fourth mark stands over the plane of the first three, mm, signed; 0 where they span no plane.
    private static double Height(Point3[] p, int[] marks)
    {
        var normal = (p[marks[1]] - p[marks[0]]).Cross(p[marks[2]] - p[marks[0]]);
        return normal.Length > Sameness.Mm * Sameness.Mm ? normal.Unit().Dot(p[marks[3]] - p[marks[0]]) : 0;
    }
}
