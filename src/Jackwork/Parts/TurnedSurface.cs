using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Meshes;
using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>The surface of a turned part with its bore, for pictures and models: its section set round the axis.</summary>
internal static class TurnedSurface
{
    /// <summary>Half planes round the axis: flats of a part of 60 mm stand 0.04 mm in.</summary>
    private const int Planes = 64;

    /// <summary>The surface as drawn, mm.</summary>
    /// <param name="turned">The part.</param>
    /// <param name="joint">The joint of the member that it sits on.</param>
    public static TriangleMesh Of(Turned turned, Joint joint)
    {
        // Against the section's own way round, so that the triangles look outwards.
        List<Point2> ring = [.. turned.Cut.Segments.Reverse().Select(s => s.Start)];
        var (a, u) = (joint.Along, joint.Along.AnyPerpendicular());
        var v = a.Cross(u);
        var points = ImmutableArray.CreateBuilder<Point3>(Planes * ring.Count);
        var triangles = ImmutableArray.CreateBuilder<Triangle>(2 * Planes * ring.Count);
        for (var i = 0; i < Planes; i++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / Planes);
            points.AddRange(ring.Select(p => joint.Through + (p.X * a + p.Y * (cos * u + sin * v))));
            for (var k = 0; k < ring.Count; k++)
            {
                var (here, next, on) = (i * ring.Count, (i + 1) % Planes * ring.Count, (k + 1) % ring.Count);
                triangles.AddRange(new Triangle(here + k, next + k, next + on), new Triangle(here + k, next + on, here + on));
            }
        }

        return new(points.ToImmutable(), triangles.ToImmutable());
    }
}
