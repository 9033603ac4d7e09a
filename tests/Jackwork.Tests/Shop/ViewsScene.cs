using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Views;
using Jackwork.Solids;

namespace Jackwork.Tests.Shop;

/// <summary>Parts made of one convex piece each, as drawn, and what is seen of them.</summary>
internal static class ViewsScene
{
    public static Part Part(string name, ConvexPiece piece) => new(name, PartKind.Figure, Body.Case, [piece], 1, Material.Named("steel"));

    public static Part Box(string name, Point3 middle, double x, double y, double z) => Part(name, ConvexPiece.Box(Frame.Translation(middle - default(Point3)), new(x, y, z)));

    public static AssemblyView View(ViewSide side, params Part[] parts) => AssemblyView.Of(parts, _ => Frame.Identity, side);

    public static IEnumerable<Segment> Segments(AssemblyView view) => view.Lines.SelectMany(l => l.Points.Zip(l.Points.Skip(1), (a, b) => new Segment(a, b, 0)));

    public static double Length(AssemblyView view) => Segments(view).Sum(s => s.Length);
}
