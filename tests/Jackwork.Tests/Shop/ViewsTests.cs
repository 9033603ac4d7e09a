using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Views;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>Lines of simple solids, whose lengths and ends follow from plane geometry.</summary>
[Trait("Proof", "closed form")]
public sealed class ViewsTests
{
    /// <summary>To what a crossing of two lines may be off, mm.</summary>
    private const double Close = 0.01;

    public static TheoryData<string, double, double> Sides { get; } = new() { { "elevation", 30, 20 }, { "plan", 30, 50 }, { "side", 50, 20 } };

    private static ViewSide Side(string name) => ViewSide.All.Single(s => s.Name == name);

    [Theory]
    [MemberData(nameof(Sides))]
    public void A_box_is_its_four_outer_edges_once(string side, double across, double up)
    {
        var view = ViewsScene.View(Side(side), ViewsScene.Box("box", new(3, -2, 7), 30, 20, 50));
        Assert.Equal(4, ViewsScene.Segments(view).Count());
        Assert.Equal(2 * (across + up), ViewsScene.Length(view), Close);
        Assert.Equal(across, view.Bounds.Width, 1e-9);
        Assert.Equal(up, view.Bounds.Height, 1e-9);
    }

    [Fact]
    public void A_box_before_another_hides_what_it_covers()
    {
        // The near one covers the far one's lower right quarter, 12 by 8 mm.
        var view = ViewsScene.View(ViewSide.Elevation, ViewsScene.Box("far", new(0, 0, 0), 40, 30, 10), ViewsScene.Box("near", new(18, -17, 30), 20, 20, 10));
        Assert.Equal(2 * (40 + 30) - 12 - 8 + 2 * (20 + 20), ViewsScene.Length(view), 3 * Close);
        Assert.Equal(4 + 4, ViewsScene.Segments(view).Count());
        Assert.Equal(0, view.PartAt(new(0, 0)));
        Assert.Equal(1, view.PartAt(new(15, -10)));
        Assert.Null(view.PartAt(new(25, 10)));
    }

    [Fact]
    public void A_box_wholly_behind_another_is_not_drawn()
    {
        var view = ViewsScene.View(ViewSide.Elevation, ViewsScene.Box("far", new(0, 0, 0), 40, 30, 10), ViewsScene.Box("near", new(0, 0, 30), 41, 31, 10));
        Assert.All(view.Lines, l => Assert.Equal(1, l.Part));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    [InlineData(-1.1)]
    public void A_cylinder_before_a_box_cuts_its_edges_where_its_outline_crosses_them(double lean)
    {
        // Its axis leans in the plane of the view; its outline runs at the radius on either side: it cuts a level edge at x = (y sin -+ r) / cos.
        const double radius = 6, top = 15;
        var (sin, cos) = Math.SinCos(lean);
        Point3 At(double s) => new(s * sin, s * cos, 30);
        var view = ViewsScene.View(ViewSide.Elevation, ViewsScene.Box("box", default, 120, 2 * top, 10), ViewsScene.Part("rod", ConvexPiece.Cylinder(At(-60), At(60), radius)));
        foreach (var y in (ReadOnlySpan<double>)[-top, top])
        {
            var ends = ViewsScene.Segments(view).Where(s => Math.Abs(s.Start.Y - y) < 1e-9 && Math.Abs(s.End.Y - y) < 1e-9)
                .SelectMany(s => (double[])[s.Start.X, s.End.X]).Order().ToArray();
            double[] expected = [-60, (y * sin - radius) / cos, (y * sin + radius) / cos, 60];
            Assert.Equal(expected.Length, ends.Length);
            Assert.All(expected.Zip(ends), e => Assert.Equal(e.First, e.Second, Close));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3.5)]
    [InlineData(-5)]
    public void A_bore_shows_what_lies_behind_it(double off)
    {
        // Through a bore of radius 6 an edge at this distance from its middle is seen over a chord.
        const double radius = 6;
        var ring = ViewsScene.Part("ring", ConvexPiece.Cylinder(new(0, 0, 20), new(0, 0, 26), 25)) with { Plates = [PlateShape.Ring(new(0, 0, 20), new(0, 0, 26), 25, 2 * radius)] };
        var view = ViewsScene.View(ViewSide.Elevation, ViewsScene.Box("box", new(0, off - 5, 0), 40, 10, 10), ring);
        Assert.Equal(2 * Math.Sqrt(radius * radius - off * off), ViewsScene.Length(view) - 2 * Math.PI * (25 + radius), 2 * Close);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.3)]
    [InlineData(0.7)]
    public void A_cone_shows_the_tangents_from_its_point_to_its_leaning_base(double lean)
    {
        // Leaning away, the base is an ellipse of half axes r and b = r sin(lean), the point stands D = h cos(lean) from its middle;
        // a line y = m (x - D) touches the ellipse where m^2 = r^2 / (D^2 - b^2).
        const double radius = 10, height = 40;
        var (sin, cos) = Math.SinCos(lean);
        var view = ViewsScene.View(ViewSide.Elevation, ViewsScene.Part("cone", ConvexPiece.Frustum(default, radius, new(height * cos, 0, height * sin), 0)));
        var slope = radius / Math.Sqrt(height * height * cos * cos - radius * radius * sin * sin);
        var sides = ViewsScene.Segments(view).Where(s => s.Length > height / 2).ToList();
        Assert.Equal(2, sides.Count);
        Assert.All(sides, s => Assert.Equal(slope, Math.Abs((s.End.Y - s.Start.Y) / (s.End.X - s.Start.X)), 0.001));
    }

    [Fact]
    public void A_ball_and_a_rod_with_round_ends_show_their_outlines()
    {
        Assert.Equal(2 * Math.PI * 9, ViewsScene.Length(ViewsScene.View(ViewSide.Plan, ViewsScene.Part("ball", ConvexPiece.Round(new(1, 2, 3), 9)))), Close);
        var rod = ViewsScene.View(ViewSide.Elevation, ViewsScene.Part("rod", ConvexPiece.Capsule(new(0, 0, 0), new(30, 40, 0), 3)));
        Assert.Equal(2 * 50 + 2 * Math.PI * 3, ViewsScene.Length(rod), 0.5);
    }

    [Fact]
    public void A_bar_seen_flat_is_two_arcs_and_two_tangents()
    {
        var view = ViewsScene.View(ViewSide.Elevation, ViewsScene.Part("bar", ConvexPiece.Bar(new(0, 0, -2), 8, new(30, 0, -2), 5, new(0, 0, 4))));
        Assert.Equal(Shapes.HullLength(8, 5, 30), ViewsScene.Length(view), Close);
    }

    [Fact]
    public void Two_glued_bars_of_one_lever_have_no_line_between_them()
    {
        static Part Arm(string name, Point3 to) => ViewsScene.Part(name, ConvexPiece.Bar(default, 5, to, 5, new(0, 0, 4))) with { Kind = PartKind.Lever };
        var view = ViewsScene.View(ViewSide.Elevation, Arm("one", new(40, 0, 0)), Arm("two", new(0, 40, 0)));

        // Two bars at right angles: half a circle at each end, a quarter at the corner, two sides of 40 and two of 40 - 5.
        Assert.Equal(2 * Math.PI * 5 + Math.PI * 5 / 2 + 2 * 40 + 2 * 35, ViewsScene.Length(view), 0.1);
    }

    [Fact]
    public void A_ball_half_sunk_in_a_block_meets_it_in_a_circle()
    {
        // Its middle lies 3 below the face: the seam is a circle of radius sqrt(25 - 9) about it, and the ball's own outline is hidden.
        var view = ViewsScene.View(ViewSide.Elevation, ViewsScene.Box("block", new(0, 0, -10), 40, 30, 20), ViewsScene.Part("ball", ConvexPiece.Round(new(2, 1, -3), 5)));
        Assert.Equal(2 * (40 + 30) + 2 * Math.PI * 4, ViewsScene.Length(view), 0.1);
        Assert.All(ViewsScene.Segments(view).Where(s => s.Length < 1), s => Assert.Equal(4, s.Start.DistanceTo(new(2, 1)), Close));
    }
}
