using CsCheck;
using Jackwork.Guides;

namespace Jackwork.Tests.Guides;

/// <summary>Random tracks of guides, and where they lead, worked out apart from the code under test.</summary>
internal static class RandomTracks
{
    private static readonly Gen<GuideLeg> Leg = Gen.Select(Gen.Double[-2.5, 2.5], Gen.Double[-30, 30], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.5, 4]), (turn, lift, rounding) => new GuideLeg(turn, lift, rounding));

    /// <summary>Tracks of one to four legs, drawn anywhere along them; some corners sharp.</summary>
    public static readonly Gen<GuideTrack> Any = Made(Leg);

    /// <summary>The same without a sharp corner.</summary>
    public static readonly Gen<GuideTrack> Smooth = Made(Leg.Select(l => l with { Rounding = 0.5 + l.Rounding }));

    /// <summary>
    /// Where a track has turned (rad) and lifted (mm) to at a travel from the place as drawn: its direction, blended over each join by
    /// w = 3x^2 - 2x^3, integrated between corners and ends of joins by Gauss's rule of two points, which is exact for cubics.
    /// </summary>
    public static (double Turn, double Lift) Pose(GuideTrack track, double travel)
    {
        var (from, to) = (Math.Min(track.Drawn, track.Drawn + travel), Math.Max(track.Drawn, track.Drawn + travel));
        double[] breaks = [from, .. track.Joins.SelectMany(j => (double[])[j.At - j.Half, j.At, j.At + j.Half]).Where(t => t > from && t < to).Order(), to];
        var (x, y) = (0.0, 0.0);
        foreach (var (a, b) in breaks.Zip(breaks.Skip(1)))
        {
            foreach (var node in (double[])[-1 / Math.Sqrt(3), 1 / Math.Sqrt(3)])
            {
                var (dx, dy) = Direction(track, (a + b) / 2 + node * (b - a) / 2);
                (x, y) = (x + dx * (b - a) / 2, y + dy * (b - a) / 2);
            }
        }

        return (Math.Sign(travel) * x / track.Radius, Math.Sign(travel) * y);
    }

    private static (double X, double Y) Direction(GuideTrack track, double t)
    {
        var corners = new List<double> { 0 };
        foreach (var leg in track.Legs)
        {
            corners.Add(corners[^1] + Math.Sqrt(Math.Pow(track.Radius * leg.Turn, 2) + leg.Lift * leg.Lift));
        }

        (double X, double Y) Of(int leg) => (track.Radius * track.Legs[leg].Turn / (corners[leg + 1] - corners[leg]), track.Legs[leg].Lift / (corners[leg + 1] - corners[leg]));
        for (var j = 1; j < track.Legs.Length; j++)
        {
            var half = track.Joins[j - 1].Half;
            if (Math.Abs(t - corners[j]) < half)
            {
                var x = (t - corners[j] + half) / (2 * half);
                var w = 3 * x * x - 2 * x * x * x;
                var (a, b) = (Of(j - 1), Of(j));
                return ((1 - w) * a.X + w * b.X, (1 - w) * a.Y + w * b.Y);
            }
        }

        var i = 0;
        while (i + 1 < track.Legs.Length && t >= corners[i + 1])
        {
            i++;
        }

        return Of(i);
    }

    private static Gen<GuideTrack> Made(Gen<GuideLeg> leg) => Gen.Select(leg.Array[1, 4], Gen.Double[4, 20], Gen.Double[0, 1])
        .Where((legs, radius, _) => legs.All(l => Math.Abs(radius * l.Turn) + Math.Abs(l.Lift) > 3))
        .Select((legs, radius, share) => (Legs: legs, Radius: radius, Share: share, Track: new GuideTrack(radius, [.. legs])))
        .Where(m => m.Track.Crowded is null && m.Track.Joins.All(j => Math.Abs(j.Turn) is > 0.01 and < GuideTrack.SharpestTurn))
        .Select(m => new GuideTrack(m.Radius, [.. m.Legs], m.Share * m.Track.Length));
}
