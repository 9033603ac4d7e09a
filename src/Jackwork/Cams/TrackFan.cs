using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>Tracks sorted by the direction in which they lie from the shaft, so that only a few need trying.</summary>
internal sealed class TrackFan
{
    private const int Bins = 180;

    /// <summary>How far to either side of the asked direction tracks are still tried, rad; a cut cam's follower stands off its nominal direction by far less.</summary>
    private const double Margin = 0.12;

    private readonly Track[][] bins = new Track[Bins][];

    public TrackFan(Track[] tracks)
    {
        var lists = Enumerable.Range(0, Bins).Select(_ => new List<Track>()).ToArray();
        foreach (var t in tracks)
        {
            Place(t, lists);
        }

        bins = [.. lists.Select(l => l.ToArray())];
    }

    public ReadOnlySpan<Track> Towards(Point2 p) => bins[Bin(p.FromOrigin.Angle)];

    private static void Place(Track t, List<Track>[] lists)
    {
        // Walk along the track finely enough that no bin is stepped over.
        var n = t.IsLine ? 64 : Math.Max(8, (int)(64 * t.Half));
        var hit = new bool[Bins];
        for (var i = 0; i <= n; i++)
        {
            var share = (double)i / n;
            var p = t.IsLine ? t.Origin + share * t.Size * t.Along : t.Origin + t.Size * t.Along.Turned((2 * share - 1) * t.Half);
            var angle = p.FromOrigin.Angle;
            for (var off = -Margin; off <= Margin; off += Math.PI / Bins)
            {
                hit[Bin(angle + off)] = true;
            }
        }

        for (var b = 0; b < Bins; b++)
        {
            if (hit[b])
            {
                lists[b].Add(t);
            }
        }
    }

    private static int Bin(double angle)
    {
        var turns = angle / (2 * Math.PI);
        return Math.Min(Bins - 1, (int)((turns - Math.Floor(turns)) * Bins));
    }
}
