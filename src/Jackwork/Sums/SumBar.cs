using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Sums;

/// <summary>The bar of a summing lever: a round hole for the driver's pin at the origin, slots along x for the other two. Lengths mm.</summary>
/// <remarks>A slot is as long as its pin wanders over the performance and a clearance more at each end; the bar ends round about its last opening.</remarks>
/// <param name="With">Least and greatest distance of the second driver's pin along the bar.</param>
/// <param name="Driven">Least and greatest place of the driven's pin along the bar, negative beyond the driver's.</param>
/// <param name="Pin">Diameter of the pins.</param>
/// <param name="Clearance">How much wider the openings are than the pins.</param>
/// <param name="Width">Width of the bar.</param>
public sealed record SumBar((double Low, double High) With, (double Low, double High) Driven, double Pin, double Clearance, double Width)
{
    /// <summary>Diameter of the pins unless given.</summary>
    public const double UsualPin = 3;

    /// <summary>Clearance unless given: what a router holds on both sides.</summary>
    public const double UsualClearance = 0.15;

    /// <summary>Width of the bar over the diameter of its pins, unless given (common practice, no source).</summary>
    public const double UsualWidth = 3;

    /// <summary>The bar that a performance needs.</summary>
    /// <param name="drive">The lever.</param>
    /// <param name="motion">The performance.</param>
    /// <param name="pin">Diameter of the pins, mm.</param>
    /// <param name="clearance">How much wider the openings are, mm.</param>
    /// <param name="width">Width of the bar, mm.</param>
    public static SumBar Of(SumDrive drive, Motion.Motion motion, double pin, double clearance, double width)
    {
        var states = new MemberState[motion.Machine.Members.Count];
        var (with, driven) = ((Low: double.PositiveInfinity, High: double.NegativeInfinity), (Low: double.PositiveInfinity, High: double.NegativeInfinity));
        for (var i = 0; i < motion.Steps; i++)
        {
            Residuals.Fill(motion, i, states);
            var (p, q, r) = drive.At(states);
            var e = (q - p).Across(drive.Normal);
            var (far, at) = (e.Length, (r - p).Dot(e.Unit()));
            with = (Math.Min(with.Low, far), Math.Max(with.High, far));
            driven = (Math.Min(driven.Low, at), Math.Max(driven.High, at));
        }

        return new(with, driven, pin, clearance, width);
    }

    /// <summary>Width of the slots and diameter of the hole.</summary>
    public double Opening => Pin + Clearance;

    /// <summary>Where the middle of the bar's round end stands on the side away from the second driver, and on the other.</summary>
    public (double From, double To) Ends => (Math.Min(0, Driven.Low) - Clearance, Math.Max(With.High, Driven.High) + Clearance);

    /// <summary>The outside, counter-clockwise.</summary>
    public Outline Rim => Oblong(Ends.From, Ends.To, Width / 2);

    /// <summary>The hole and the slots.</summary>
    public ImmutableArray<Outline> Holes => [Outline.Circle(Point2.Origin, Opening / 2), Slot(With), Slot(Driven)];

    /// <summary>Least wood between the openings and beside them; negative where two run into each other.</summary>
    public double Wall
    {
        get
        {
            (double Low, double High)[] openings = [(0, 0), (With.Low - Clearance, With.High + Clearance), (Driven.Low - Clearance, Driven.High + Clearance)];
            Array.Sort(openings);
            var least = (Width - Opening) / 2;
            for (var i = 1; i < openings.Length; i++)
            {
                least = Math.Min(least, openings[i].Low - openings[i - 1].High - Opening);
            }

            return least;
        }
    }

    private Outline Slot((double Low, double High) way) => Oblong(way.Low - Clearance, way.High + Clearance, Opening / 2);

    private static Outline Oblong(double from, double to, double radius)
    {
        var (left, right) = (Segment.Arc(new(from, 0), radius, Math.PI / 2, Math.PI), Segment.Arc(new(to, 0), radius, -Math.PI / 2, Math.PI));
        return new([left, new(left.End, right.Start, 0), right, new(right.End, left.Start, 0)]);
    }
}
