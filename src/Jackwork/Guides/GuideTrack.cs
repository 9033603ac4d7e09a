using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Guides;

/// <summary>The track of a guide: how a member that sits in it turns about an axis and lifts along it over one travel.</summary>
/// <remarks>
/// <para>The cylinder of radius R is developed: P = (R theta, z), theta the turn and z the lift. The track runs there along straight legs
/// with unit directions d; the travel s is its length in mm as if every corner were sharp. On a leg P' = d: a lift, a swing, or a
/// helix of the lead angle atan(z'/(R theta')).</para>
/// <para>A join turns the direction from d0 to d1 by the angle e over a length 2b, half of it on either leg. With x = 0..1 over that length and
/// w = 3x^2 - 2x^3: P' = (1 - w) d0 + w d1, P'' = w_x (d1 - d0)/(2b), so P is twice continuously differentiable and, the integral of w
/// being W = x^3 - x^4/2 and W(1) = 1/2, ends where the sharp track does: P = P0 + 2b ((x - W) d0 + W d1).</para>
/// <para>Within a join |P'| falls to cos(e/2), so that the travel there is somewhat longer than the middle line. Its curvature is
/// P' x P''/|P'|^3 = w_x sin(e)/(2b |P'|^3), greatest at x = 1/2, where w_x = 3/2: the least radius is
/// r = (2/3) b cos^2(e/2)/sin(e/2), so a radius r wants b = (3/2) r sin(e/2)/cos^2(e/2). A circular arc would want r tan(e/2), but
/// jump in curvature at both its ends.</para>
/// <para>The blend of directions by a smooth step is that of trajectory planning (L. Biagiotti and C. Melchiorri, Trajectory Planning for
/// Automatic Machines and Robots, chapter 8, from memory); the radius by differentiating it. Beyond its ends the track is taken as going straight on.</para>
/// </remarks>
public sealed class GuideTrack : IEquatable<GuideTrack>
{
    /// <summary>Most that one leg may turn off from the one before, rad: beyond, a pin pushed along the one would be pushed back by the other.</summary>
    public const double SharpestTurn = 2 * Math.PI / 3;

    /// <summary>Sine and cosine difference, or mm, within which two directions or lengths are one: rounding.</summary>
    private const double Alike = 1e-9;

    /// <summary>How far beyond a sharp corner one looks for what it changed, mm; shorter ways pass over nothing.</summary>
    public const double PastCorner = 0.01;

    private readonly Piece[] pieces;
    private readonly double[] starts;
    private readonly Vec2 drawnPlace;

    /// <summary>A track of one leg or more, none of length zero and none of which turns back by more than <see cref="SharpestTurn"/>.</summary>
    /// <param name="radius">Radius of the cylinder that is developed, mm.</param>
    /// <param name="legs">The legs in order.</param>
    /// <param name="drawn">How far along the track the place as drawn lies, mm from its beginning.</param>
    public GuideTrack(double radius, ImmutableArray<GuideLeg> legs, double drawn = 0)
    {
        (Radius, Legs, Drawn) = (radius, legs, drawn);
        var runs = legs.Select(l => new Vec2(radius * l.Turn, l.Lift)).ToList();
        var joins = new List<TrackJoin>();
        for (var (i, at) = (1, runs[0].Length); i < runs.Count; at += runs[i++].Length)
        {
            var turn = Math.Atan2(runs[i - 1].Cross(runs[i]), runs[i - 1].Dot(runs[i]));
            joins.Add(new(i, at, turn, legs[i].Rounding));
        }

        Joins = [.. joins];
        Length = runs.Sum(r => r.Length);
        Crowded = FirstCrowded(runs);
        pieces = [.. Pieces(runs)];
        starts = [.. pieces.Select(p => p.From)];
        drawnPlace = pieces[PieceAt(drawn)].At(drawn).Place;
    }

    /// <summary>Radius of the cylinder, mm.</summary>
    public double Radius { get; }

    /// <summary>The legs.</summary>
    public ImmutableArray<GuideLeg> Legs { get; }

    /// <summary>How far along the track the place as drawn lies, mm from its beginning.</summary>
    public double Drawn { get; }

    /// <summary>The joins between the legs, one fewer than these.</summary>
    public ImmutableArray<TrackJoin> Joins { get; }

    /// <summary>Length of the whole track, its corners taken as sharp, mm.</summary>
    public double Length { get; }

    /// <summary>Least and greatest travel from the place as drawn, mm.</summary>
    public (double From, double To) Ends => (-Drawn, Length - Drawn);

    /// <summary>The first leg that is too short for the joins at its ends, and how much length they want, mm; null where all fit. A crowded track is of no use.</summary>
    public (int Leg, double Length, double Wanted)? Crowded { get; }

    /// <summary>Travels from the place as drawn at which the track has a sharp corner, mm.</summary>
    public IEnumerable<double> Corners => Joins.Where(j => j.IsCorner).Select(j => j.At - Drawn);

    /// <summary>Where the track is at a travel from the place as drawn, mm. At a sharp corner the derivatives are those just after it.</summary>
    public TrackPoint At(double travel)
    {
        var t = travel + Drawn;
        var p = pieces[PieceAt(t)].At(t);
        return p with { Place = p.Place - drawnPlace };
    }

    /// <summary>How far one may go on from a travel, forward (1) or backward (-1), without passing over a change of curvature unseen, mm: an eighth of a join, or to the end of a straight part and a little way beyond.</summary>
    public double Reach(double travel, int way)
    {
        var t = travel + Drawn;
        var i = PieceAt(t);
        if (pieces[i].Half > 0)
        {
            return pieces[i].Half / 4;
        }

        var next = i + way;
        return next < 0 || next == pieces.Length ? double.PositiveInfinity
            : Math.Abs(t - starts[Math.Max(i, next)]) + (pieces[next].Half > 0 ? pieces[next].Half / 4 : PastCorner);
    }

    /// <summary>The unit direction of a leg, on the developed cylinder.</summary>
    public Vec2 Direction(int leg) => new Vec2(Radius * Legs[leg].Turn, Legs[leg].Lift).Unit();

    /// <summary>Whether both are the same track.</summary>
    public bool Equals(GuideTrack? other) => other is not null && (Radius, Drawn) == (other.Radius, other.Drawn) && Legs.SequenceEqual(other.Legs);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as GuideTrack);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Radius, Drawn, Legs.Length, Length);

    private int PieceAt(double t)
    {
        var i = starts.AsSpan().BinarySearch(t);
        return Math.Max(0, i < 0 ? ~i - 1 : i);
    }

    private (int, double, double)? FirstCrowded(List<Vec2> runs)
    {
        for (var i = 0; i < runs.Count; i++)
        {
            var wanted = (i > 0 ? Joins[i - 1].Half : 0) + (i < Joins.Length ? Joins[i].Half : 0);
            if (wanted > runs[i].Length + Alike)
            {
                return (i, runs[i].Length, wanted);
            }
        }

        return null;
    }

    // Each leg's straight part, and after it the join to the next.
    private IEnumerable<Piece> Pieces(List<Vec2> runs)
    {
        var corner = default(Vec2);
        var before = 0.0;
        for (var (i, at) = (0, 0.0); i < runs.Count; at += runs[i++].Length)
        {
            var d = runs[i].Unit();
            yield return new(at + before, corner + before * d, d, d, 0);
            corner += runs[i];
            if (i < Joins.Length && !Joins[i].IsCorner)
            {
                before = Joins[i].Half;
                yield return new(Joins[i].At - before, corner - before * d, d, runs[i + 1].Unit(), before);
            }
            else
            {
                before = 0;
            }
        }
    }

    /// <summary>A straight part of the track, or the whole of a join.</summary>
    private readonly record struct Piece(double From, Vec2 Begin, Vec2 D0, Vec2 D1, double Half)
    {
        public TrackPoint At(double t)
        {
            if (Half == 0)
            {
                return new(Begin + (t - From) * D0, D0, default);
            }

            var x = (t - From) / (2 * Half);
            var w = x * x * (3 - 2 * x);
            var sum = x * x * x * (1 - x / 2);
            return new(Begin + 2 * Half * ((x - sum) * D0 + sum * D1), (1 - w) * D0 + w * D1, 6 * x * (1 - x) / (2 * Half) * (D1 - D0));
        }
    }
}
