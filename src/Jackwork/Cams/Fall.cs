using Jackwork.Motion;
using Jackwork.Timing.Laws;

namespace Jackwork.Cams;

/// <summary>A stretch of a cam's turn over which it lets its follower go, as the chart draws it.</summary>
/// <param name="From">Crank angle where the cam lets go, rad, within the cam's first turn.</param>
/// <param name="Length">Crank angle over which the fall is drawn, rad.</param>
/// <param name="Turn">Crank angle of one turn of the cam, rad.</param>
/// <param name="Q">The follower's coordinate just before it is let go, rad or mm.</param>
/// <param name="T">The shaft's coordinate there, rad.</param>
/// <param name="Low">The follower's coordinate where it lands, rad or mm.</param>
/// <param name="Held">Crank angle over which the chart holds the member before it is let go, rad.</param>
/// <param name="Free">Crank angle from <paramref name="From"/> to where the member is next moved, rad.</param>
/// <param name="MoveIndex">Index of the move in the chart.</param>
public readonly record struct Fall(double From, double Length, double Turn, Jet Q, Jet T, double Low, double Held, double Free, int MoveIndex)
{
    /// <summary>Crank angles nearer than this are one, rad: rounding of added turns.</summary>
    private const double SameCrank = 1e-9;

    /// <summary>Crank angle where it ends as drawn, rad; it may lie beyond the cam's first turn.</summary>
    public double To => From + Length;

    /// <summary>How far after the beginning of the fall, or of the last one, a crank angle lies, rad, 0 up to a turn of the cam.</summary>
    public double Since(double crank)
    {
        var since = (crank - From) % Turn;
        since += since < 0 ? Turn : 0;
        return since > Turn - SameCrank ? 0 : since;
    }

    /// <summary>Whether the follower falls, as drawn, at a crank angle, rad; where it lands still counts.</summary>
    public bool Holds(double crank) => Since(crank) < Length + SameCrank;

    /// <summary>The shaft's coordinate so long after the beginning of the fall, rad.</summary>
    public Jet Shaft(double since) => new(T.Value + T.First * since, T.First, 0);

    /// <summary>The falls of a cam's first turn, rising.</summary>
    /// <param name="motion">The motion.</param>
    /// <param name="acted">The acted member that the cam serves.</param>
    /// <param name="turn">One turn of the cam.</param>
    internal static IReadOnlyList<Fall> Of(Motion.Motion motion, Acted acted, CamTurn turn)
    {
        var pieces = acted.Chart.Pieces;
        if (!pieces.Any(p => p.Law == MotionLaws.Drop))
        {
            return [];
        }

        var rate = Math.Abs(motion.Machine.Turns[acted.Shaft]!.Value.Value);
        var (period, length) = (2 * Math.PI / rate, motion.Machine.Performance.Length / turn.Turns);
        var probe = motion.Probe();
        var list = new List<Fall>();
        for (var k = 0; k < pieces.Length; k++)
        {
            if (pieces[k].Law != MotionLaws.Drop)
            {
                continue;
            }

            var (before, after) = (pieces[(k + pieces.Length - 1) % pieces.Length], pieces[(k + 1) % pieces.Length]);
            var lasts = (pieces[k].To - pieces[k].From) / rate;
            foreach (var from in At(pieces[k].From / rate, period, length))
            {
                probe.Go(from, before: true);
                var (q, t) = (probe.States[acted.Cam.Driven].Q, probe.States[acted.Cam.Driver].Q);
                probe.Go(from + lasts, before: true);
                list.Add(new(from, lasts, length, q, t, probe.States[acted.Cam.Driven].Q.Value, Still(before) / rate, lasts + Still(after) / rate, pieces[k].MoveIndex));
            }
        }

        return [.. list.OrderBy(f => f.From)];
    }

    /// <summary>The crank angles within a cam's turn at which something that comes again each period happens, rad, rising.</summary>
    /// <param name="angle">One crank angle at which it happens, rad.</param>
    /// <param name="period">Crank angle after which it happens again, rad.</param>
    /// <param name="length">Crank angle of the cam's turn, rad.</param>
    internal static IEnumerable<double> At(double angle, double period, double length)
    {
        var first = angle - period * Math.Floor(angle / period);

        // What happens at the very start of the turn must not be taken for the end by rounding.
        first = first > period - SameCrank ? 0 : first;
        for (var crank = first; crank < length - SameCrank; crank += period)
        {
            yield return crank;
        }
    }

    private static double Still(Timing.ChartPiece piece) => piece.Law is null ? piece.To - piece.From : 0;
}
