namespace Jackwork.Motion;

/// <summary>What a relation fails to close by, mm, as a function of the state of one member, all others known.</summary>
internal interface ITravelGap
{
    /// <summary>The gap.</summary>
    Jet At(in MemberState state);
}

/// <summary>Finds the coordinate of a member that closes a relation where no closed form is known: the travel on a guide, what a cord moves.</summary>
/// <remarks>
/// <para>f(s) = 0, f the relation's gap in mm. Along a track that turns and lifts at once no closed form is known, so the root is sought by Newton's
/// method from where the motion so far would lead: s - f/f_s, no step longer than <see cref="Stride"/>; once f has changed its sign, held in that bracket
/// and halving it where a step would leave it (W. H. Press and others, Numerical Recipes, section 9.4, from memory).</para>
/// <para>The branch e is the sign of f_s. It is never left: where f_s would change its sign before f does, the relation can't close, and
/// the nearest pose is where f_s = 0. A motion that runs through a dead centre therefore turns back there. So that f_s does not change its
/// sign twice within a step, none is longer than twice the way to where f_ss would bring it to 0, or than <see cref="Guides.GuideTrack.Reach"/>.</para>
/// <para>Then f(s(c), c) = 0 twice differentiated by the crank c: with all others moving and s still, f_s s' = -f';
/// with s moving at s' evenly, f_s s'' = -f''. At a sharp corner of the track the derivatives are those just after it.</para>
/// <para>Where the coordinate is an angle, s is that times an arm, so that the lengths below hold for it too.</para>
/// </remarks>
internal static class TravelRoot
{
    /// <summary>Longest step of travel, mm: short against a rod or the distance of two joins, so that a neighbouring root is not jumped to.</summary>
    private const double Stride = 4;

    /// <summary>Step at which the root is found, mm: some hundred times what a double tells of a track's length.</summary>
    private const double Found = 1e-12;

    /// <summary>Speed f_s (mm per mm) below which a pose counts as a dead centre.</summary>
    private const double AtDeadCentre = 3e-6;

    /// <summary>Gap that still counts as touching at a dead centre, mm: rounding, far below what closure is held to.</summary>
    private const double Touching = 1e-11;

    /// <summary>Most steps: a track of some metres.</summary>
    private const int Most = 1000;

    /// <summary>Solves for the state of a member on a guide.</summary>
    /// <param name="joint">The guide.</param>
    /// <param name="moving">The gap with everything else moving.</param>
    /// <param name="still">The same with everything else standing still.</param>
    /// <param name="history">The step before.</param>
    /// <param name="miss">The gap at the nearest pose, mm, zero if it closes.</param>
    /// <param name="arm">What one unit of the coordinate moves, mm: 1 for a travel, an arm's length for an angle.</param>
    public static MemberState Solve<T>(in Joint joint, in T moving, in T still, in History history, out double miss, double arm = 1)
        where T : struct, ITravelGap, allows ref struct
    {
        var root = Root(joint, still, history, arm, out miss);
        if (miss != 0)
        {
            return joint.At(Jet.Constant(root.S));
        }

        if (root.Slope < AtDeadCentre * arm)
        {
            // As a pose: its speed would take more than the relation tells.
            return joint.At(history.Before with { Value = root.S });
        }

        var slope = history.Branch * root.Slope;
        var first = -moving.At(joint.At(Jet.Constant(root.S))).First / slope;
        var second = -moving.At(joint.At(new(root.S, first, 0))).Second / slope;
        return joint.At(new(root.S, first, second));
    }

    private static Place Root<T>(in Joint joint, in T gap, in History history, double arm, out double miss)
        where T : struct, ITravelGap, allows ref struct
    {
        miss = 0;
        var e = history.Branch;
        var (stride, found) = (Stride / arm, Found / arm);
        if (Start(joint, gap, history, arm) is not { } at)
        {
            var stays = Place.Of(joint, gap, e, history.Before.Value);
            miss = e * stays.F;
            return stays;
        }

        for (var i = 0; i < Most; i++)
        {
            var step = -at.F / at.Slope;
            if (Math.Abs(step) < found)
            {
                return at;
            }

            if (Math.Abs(step) > Guides.GuideTrack.PastCorner / arm)
            {
                var most = Math.Min(stride, Reach(joint, at, Math.Sign(step)));
                step = Math.Clamp(step, -most, most);
            }


            var next = Place.Of(joint, gap, e, at.S + step);
            if (next.Slope <= 0 && next.F > 0 == at.F > 0)
            {
                next = Turning(joint, gap, e, at, next, found);
                if (next.F > 0 == at.F > 0)
                {
                    miss = Math.Abs(next.F) < Touching ? 0 : e * next.F;
                    return next;
                }
            }

            if (next.F > 0 != at.F > 0)
            {
                return Within(joint, gap, e, at, next, found);
            }

            at = next;
        }

        miss = e * at.F;
        return at;
    }

    // Where the motion so far leads, else where it was, else the nearest place on the branch beside that.
    private static Place? Start<T>(in Joint joint, in T gap, in History history, double arm)
        where T : struct, ITravelGap, allows ref struct
    {
        var (before, e, stride) = (history.Before, history.Branch, Stride / arm);
        var led = history.Advance * (before.First + history.Advance / 2 * before.Second);
        if (Math.Abs(led) < Guides.GuideTrack.PastCorner || Math.Abs(led) < (joint.Track?.Reach(before.Value, Math.Sign(led)) ?? stride))
        {
            var there = Place.Of(joint, gap, e, before.Value + Math.Clamp(led, -stride, stride));
            if (there.Slope > 0)
            {
                return there;
            }
        }

        var at = Place.Of(joint, gap, e, before.Value);
        var way = Math.Sign(at.Bend);
        for (var off = AtDeadCentre / arm; at.Slope <= 0 && off < stride; off *= 2)
        {
            at = Place.Of(joint, gap, e, before.Value + way * off);
        }

        return at.Slope > 0 ? at : null;
    }

    // How far a step may go.
    private static double Reach(in Joint joint, in Place at, int way)
    {
        var bend = way * at.Bend;
        return Math.Min(bend < 0 ? -2 * at.Slope / bend : double.PositiveInfinity, joint.Track?.Reach(at.S, way) ?? double.PositiveInfinity);
    }

    // Where f_s changes its sign, by halving.
    private static Place Turning<T>(in Joint joint, in T gap, int e, Place on, Place off, double found)
        where T : struct, ITravelGap, allows ref struct
    {
        while (Math.Abs(off.S - on.S) > found)
        {
            var middle = Place.Of(joint, gap, e, (on.S + off.S) / 2);
            (on, off) = middle.Slope > 0 ? (middle, off) : (on, middle);
            if (middle.S == on.S && middle.S == off.S)
            {
                break;
            }
        }

        return on;
    }

    private static Place Within<T>(in Joint joint, in T gap, int e, Place a, Place b, double found)
        where T : struct, ITravelGap, allows ref struct
    {
        var (low, high) = a.F > 0 ? (b, a) : (a, b);
        var at = Math.Abs(a.F) < Math.Abs(b.F) ? a : b;
        for (var i = 0; i < 100; i++)
        {
            var s = at.S - at.F / at.Slope;
            if (!(at.Slope > 0) || (s - low.S) * (s - high.S) > 0)
            {
                s = (low.S + high.S) / 2;
            }

            var step = Math.Abs(s - at.S);
            at = Place.Of(joint, gap, e, s);
            if (step < found || at.F == 0)
            {
                return at;
            }

            (low, high) = at.F > 0 ? (low, at) : (at, high);
        }

        return at;
    }

    /// <summary>A place on the way: e f, mm, and e f_s and e f_ss, for a unit of the coordinate.</summary>
    private readonly record struct Place(double S, double F, double Slope, double Bend)
    {
        public static Place Of<T>(in Joint joint, in T gap, int e, double s)
            where T : struct, ITravelGap, allows ref struct
        {
            var f = gap.At(joint.At(Jet.Variable(s)));
            return new(s, e * f.Value, e * f.First, e * f.Second);
        }
    }
}
