using System.Collections.Immutable;
using System.Globalization;
using Jackwork.Geometry;

namespace Jackwork.Shop.Lettering;

/// <summary>One letter as strokes along the middle of a pen one unit wide, in tenths of the height of the capitals.</summary>
/// <remarks>
/// The middle of the pen runs from y = 0 (foot) to 9 (capitals), 6 (small letters) and -3 (tails), so the ink stands 10, 7 and -3 high.
/// x = 0 is the leftmost middle line of a letter; figures may start further in, since they share one width.
/// </remarks>
/// <param name="Width">From x = 0 to the rightmost middle line, tenths; the shared width for figures.</param>
/// <param name="Left">Clear space before the ink, tenths.</param>
/// <param name="Right">Clear space after the ink, tenths.</param>
/// <param name="Strokes">Runs of lines and arcs.</param>
internal sealed record Glyph(double Width, double Left, double Right, ImmutableArray<ImmutableArray<Segment>> Strokes)
{
    /// <summary>Width of the pen, tenths.</summary>
    public const double Pen = 1;

    /// <summary>Space taken in a line, tenths.</summary>
    public double Advance => Left + Width + Pen + Right;

    /// <summary>Reads a letter from words: M x,y moves; L x,y draws a line; T x,y an arc tangent to the pen's direction; D a sets the direction, degrees.</summary>
    /// <remarks>The letter is shifted to start at x = 0 and is as wide as its strokes, unless it stands in a shared width.</remarks>
    public static Glyph Parse(double left, double right, string strokes, double? sharedWidth = null)
    {
        var done = ImmutableArray.CreateBuilder<ImmutableArray<Segment>>();
        var run = ImmutableArray.CreateBuilder<Segment>();
        var (pen, direction) = (Point2.Origin, new Vec2(1, 0));
        foreach (var word in strokes.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var n = word[1..].Split(',').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray();
            if (word[0] == 'D')
            {
                direction = Vec2.FromAngle(n[0] * Math.PI / 180);
                continue;
            }

            var to = new Point2(n[0], n[1]);
            if (word[0] == 'M')
            {
                Lift();
            }
            else
            {
                var s = word[0] == 'T' ? Tangent(pen, direction, to) : new Segment(pen, to, 0);
                run.Add(s);
                direction = s.TangentAt(1);
            }

            pen = to;
        }

        Lift();
        if (sharedWidth is { } width)
        {
            return new(width, left, right, done.ToImmutable());
        }

        var extent = Drawings.Box.Around(done.SelectMany(r => r));
        var flush = new Vec2(-extent.Min.X, 0);
        return new(extent.Width, left, right, [.. done.Select(r => r.Select(s => s.Moved(flush)).ToImmutableArray())]);

        void Lift()
        {
            if (run.Count > 0)
            {
                done.Add(run.ToImmutable());
                run.Clear();
            }
        }
    }

    // The chord of an arc makes half the sweep with the tangent at its start; the bulge is tan(sweep/4).
    private static Segment Tangent(Point2 from, Vec2 direction, Point2 to)
    {
        var chord = to - from;
        return new(from, to, Math.Tan(Math.Atan2(direction.Cross(chord), direction.Dot(chord)) / 2));
    }
}
