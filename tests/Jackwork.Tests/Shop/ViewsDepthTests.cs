using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Views;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>Views of random solids against a depth picture of triangles, which the tests make and search on their own.</summary>
[Trait("Proof", "independent")]
public sealed class ViewsDepthTests
{
    /// <summary>Facets round a full turn of the tests' own meshes.</summary>
    private const int Round = 96;

    /// <summary>Distance of the picture's points, mm.</summary>
    private const double Pixel = 0.8;

    /// <summary>How far from each other a line and a change in the picture may be, mm: above what the tests' facets cut off.</summary>
    private const double Near = 0.06;

    public static TheoryData<int, string> Scenes => new(
        from seed in Enumerable.Range(1, 2)
        from side in ViewSide.All
        select new TheoryDataRow<int, string>(seed, side.Name));

    [Theory]
    [MemberData(nameof(Scenes))]
    public void Each_point_shows_the_part_of_the_nearest_triangle(int seed, string name)
    {
        var (picture, view) = Scene(seed, name);
        var compared = 0;
        foreach (var p in Points(view))
        {
            var here = picture.At(p)?.Part;
            if (Around(p, Near).Any(q => picture.At(q)?.Part != here))
            {
                continue;
            }

            Assert.Equal(here, view.PartAt(p));
            compared++;
        }

        Assert.True(compared > 1000, $"only {compared} points were clear of all outlines");
    }

    [Theory]
    [MemberData(nameof(Scenes))]
    public void Wherever_the_part_seen_changes_there_is_a_line(int seed, string name)
    {
        var (picture, view) = Scene(seed, name);
        var lines = ViewsScene.Segments(view).ToList();
        var changes = 0;
        foreach (var p in Points(view))
        {
            foreach (var q in (ReadOnlySpan<Point2>)[p + new Vec2(Pixel, 0), p + new Vec2(0, Pixel)])
            {
                var (a, b, part) = (p, q, picture.At(p)?.Part);
                if (picture.At(q)?.Part == part)
                {
                    continue;
                }

                while (a.DistanceTo(b) > 0.001)
                {
                    var middle = a.Midpoint(b);
                    (a, b) = picture.At(middle)?.Part == part ? (middle, b) : (a, middle);
                }

                var gap = lines.Min(l => l.DistanceTo(a));
                Assert.True(gap < Near, $"the part changes at {a}, {gap:0.000} mm from any line");
                changes++;
            }
        }

        Assert.True(changes > 100, $"only {changes} changes");
    }

    [Theory]
    [MemberData(nameof(Scenes))]
    public void No_line_runs_over_a_smooth_face(int seed, string name)
    {
        // Across a line the part, the depth or the slope changes; across a hidden line that is drawn by mistake none does.
        // The slopes on both sides of an edge at which faces meet at 45 degrees or more differ by 2 tan 22.5 or more.
        const double step = 0.1, jump = 0.05, bend = 0.7;
        var (picture, view) = Scene(seed, name);
        var checkedPoints = 0;
        foreach (var s in ViewsScene.Segments(view).Where(s => s.Length > 2 * step))
        {
            var across = s.TangentAt(0).Left;
            for (var t = step; t < s.Length - step; t += 1.3)
            {
                var p = s.Start + t * s.TangentAt(0);
                var seen = new[] { -2, -1, 1, 2 }.Select(k => picture.At(p + k * step * across)).ToArray();
                var z = seen.Select(d => d?.Z ?? double.NaN).ToArray();
                var smooth = seen.All(d => d?.Part == seen[0]?.Part) && Math.Abs(2 * z[1] - z[0] - 2 * z[2] + z[3]) < jump && Math.Abs(z[1] - z[0] - z[3] + z[2]) < bend * step;
                Assert.False(smooth, $"the line from {s.Start} to {s.End} runs over a smooth face of part {seen[0]?.Part} at {p}: {string.Join(", ", seen.Select(d => d?.Z))}");
                checkedPoints++;
            }
        }

        Assert.True(checkedPoints > 100, $"only {checkedPoints} points");
    }

    private static IEnumerable<Point2> Points(AssemblyView view)
    {
        // Off round numbers, so that no point lies on an edge by design.
        for (var x = view.Bounds.Min.X - 0.3137; x < view.Bounds.Max.X; x += Pixel)
        {
            for (var y = view.Bounds.Min.Y - 0.2718; y < view.Bounds.Max.Y; y += Pixel)
            {
                yield return new(x, y);
            }
        }
    }

    private static Point2[] Around(Point2 p, double r) => [.. Enumerable.Range(0, 8).Select(k => p + r * Vec2.FromAngle(k * Math.PI / 4))];

    private static (DepthPicture Picture, AssemblyView View) Scene(int seed, string name)
    {
        var side = ViewSide.All.Single(s => s.Name == name);
        var random = new Random(seed);
        double Between(double a, double b) => a + (b - a) * random.NextDouble();
        var parts = new List<Part>();
        var picture = new DepthPicture(side.Frame);
        for (var i = 0; i < 12; i++)
        {
            // Each stands in a cell of its own, so that none runs into another.
            var middle = new Point3(24 * (i % 3) + Between(-3, 3), 24 * (i / 3 % 2) + Between(-3, 3), 24 * (i / 6) + Between(-3, 3));
            var axis = new Vec3(Between(-1, 1), Between(-1, 1), Between(-1, 1)).Unit();
            var frame = Frame.Rotation(default, axis, i % 4 == 3 ? 0 : Between(0, 6)) with { Origin = middle };
            var (r, s, h) = (Between(2, 4), Between(2, 4), Between(3, 6));
            var (piece, rings) = (i % 6) switch
            {
                0 => (ConvexPiece.Box(frame, new(2 * r, 2 * s, 2 * h)), new[] { Square(r, s, -h), Square(r, s, h) }),
                1 => (ConvexPiece.Cylinder(frame.Apply(new Point3(0, 0, -h)), frame.Apply(new Point3(0, 0, h)), r), [Circle(r, 0, -h), Circle(r, 0, h)]),
                2 => (ConvexPiece.Frustum(frame.Apply(new Point3(0, 0, -h)), r, frame.Apply(new Point3(0, 0, h)), s / 2), [Circle(r, 0, -h), Circle(s / 2, 0, h)]),
                3 => (ConvexPiece.Round(middle, r), [.. Enumerable.Range(0, Round / 2 + 1).Select(k => Circle(r * Math.Sin(2 * Math.PI * k / Round), 0, -r * Math.Cos(2 * Math.PI * k / Round)))]),
                4 => (ConvexPiece.Bar(frame.Apply(new Point3(-4, 0, -1)), r, frame.Apply(new Point3(4, 0, -1)), r, 2 * frame.Z), [Stadium(r, -1), Stadium(r, 1)]),
                _ => (ConvexPiece.Capsule(frame.Apply(new Point3(0, 0, -4)), frame.Apply(new Point3(0, 0, 4)), s),
                    [.. Enumerable.Range(0, Round / 2 + 2).Select(k => k <= Round / 4 ? k : k - 1).Select((k, n) => Circle(s * Math.Sin(2 * Math.PI * k / Round), 0, (n <= Round / 4 ? -4 : 4) - s * Math.Cos(2 * Math.PI * k / Round)))]),
            };
            parts.Add(ViewsScene.Part($"part {i}", piece));
            picture.Add(i, frame, rings);
        }

        return (picture, ViewsScene.View(side, [.. parts]));
    }

    private static Point3[] Square(double x, double y, double z) => [new(-x, -y, z), new(x, -y, z), new(x, y, z), new(-x, y, z)];

    private static Point3[] Circle(double r, double x, double z) => [.. Enumerable.Range(0, Round).Select(k => new Point3(x + r * Math.Cos(2 * Math.PI * k / Round), r * Math.Sin(2 * Math.PI * k / Round), z))];

    private static Point3[] Stadium(double r, double z) => [.. Enumerable.Range(0, 2 * Round).Select(k => (End: k < Round ? 4 : -4, Angle: k < Round ? Math.PI * (k / (Round - 1.0) - 0.5) : Math.PI * ((k - Round) / (Round - 1.0) + 0.5)))
        .Select(p => new Point3(p.End + r * Math.Cos(p.Angle), r * Math.Sin(p.Angle), z))];

    /// <summary>Triangles seen along a frame's z, the nearest found by trying those near a point.</summary>
    private sealed class DepthPicture(Frame side)
    {
        private readonly Dictionary<(int, int), List<(Point3 A, Point3 B, Point3 C, int Part)>> cells = [];

        /// <summary>Adds a solid given as rings of as many points each, closed at both ends.</summary>
        public void Add(int part, Frame frame, Point3[][] rings)
        {
            var at = rings.Select(r => r.Select(p => side.Undo(frame.Apply(p))).ToArray()).ToArray();
            for (var k = 1; k < at[0].Length; k++)
            {
                foreach (var ring in (Point3[][])[at[0], at[^1]])
                {
                    Triangle(ring[0], ring[k - 1], ring[k], part);
                }
            }

            for (var r = 1; r < at.Length; r++)
            {
                for (var k = 0; k < at[r].Length; k++)
                {
                    var next = (k + 1) % at[r].Length;
                    Triangle(at[r - 1][k], at[r - 1][next], at[r][k], part);
                    Triangle(at[r - 1][next], at[r][next], at[r][k], part);
                }
            }
        }

        public (int Part, double Z)? At(Point2 p)
        {
            (int Part, double Z)? best = null;
            foreach (var (a, b, c, part) in cells.GetValueOrDefault((Cell(p.X), Cell(p.Y)), []))
            {
                // Areas of the triangles with the point are its weights.
                double Area(Point3 u, Point3 v) => (u.X - p.X) * (v.Y - p.Y) - (u.Y - p.Y) * (v.X - p.X);
                var (wa, wb, wc) = (Area(b, c), Area(c, a), Area(a, b));
                var whole = wa + wb + wc;
                if (whole != 0 && wa / whole >= 0 && wb / whole >= 0 && wc / whole >= 0)
                {
                    var z = (wa * a.Z + wb * b.Z + wc * c.Z) / whole;
                    best = best?.Z >= z ? best : (part, z);
                }
            }

            return best;
        }

        private static int Cell(double mm) => (int)Math.Floor(mm / 2);

        private void Triangle(Point3 a, Point3 b, Point3 c, int part)
        {
            for (var i = Cell(Math.Min(a.X, Math.Min(b.X, c.X))); i <= Cell(Math.Max(a.X, Math.Max(b.X, c.X))); i++)
            {
                for (var j = Cell(Math.Min(a.Y, Math.Min(b.Y, c.Y))); j <= Cell(Math.Max(a.Y, Math.Max(b.Y, c.Y))); j++)
                {
                    if (!cells.TryGetValue((i, j), out var here))
                    {
                        cells[(i, j)] = here = [];
                    }

                    here.Add((a, b, c, part));
                }
            }
        }
    }
}
