using Jackwork.Design;
using Jackwork.Timing;

namespace Jackwork.Motion;

/// <summary>Makes the timing charts and finds, for each acted member, the chain of drives back to its cam; without sound drives only the charts are looked at.</summary>
internal sealed class ChartBuilder(DesignSpec spec, IReadOnlyList<Member> members, IReadOnlySet<int> unsound, IReadOnlyList<Drive>? drives, IReadOnlyList<Rational?>? turns, ProblemList problems)
{
    private readonly List<string> names = [.. members.Select(m => m.Name)];

    /// <summary>The acted members whose charts are right; problems noted for the others.</summary>
    public IReadOnlyList<Acted> Build()
    {
        var acted = new List<Acted>();
        var claimed = new Dictionary<int, string>();
        foreach (var (name, timing) in spec.Timing ?? NamedMap<TimingSpec>.Empty)
        {
            var path = $"timing.{name}";
            var member = names.IndexOf(name);
            if (member < 0)
            {
                problems.Add(path, $"there is no member '{name}' to act", Names.Suggest(name, names));
                continue;
            }

            var shaft = Shaft(timing.Over, $"{path}.over");
            var chart = unsound.Contains(member) ? null : Chart(member, timing, path);
            if (drives is null || turns is null)
            {
                continue;
            }

            var chain = Chain(drives, member, path, out var cam);
            if (cam is null || shaft < 0)
            {
                continue;
            }

            if (!claimed.TryAdd(cam.Driven, name))
            {
                problems.Add(path, $"'{claimed[cam.Driven]}' and '{name}' hang on the same cam, that of '{names[cam.Driven]}', and both have a chart", "Keep one of the charts; the other member follows from it");
                continue;
            }

            if (turns[cam.Driver] is null)
            {
                problems.Add($"members.{names[cam.Driven]}.{cam.Kind}.on", $"'{names[cam.Driver]}' carries a cam but no train of wheels ties it to the crank", "Gear it to the crank");
                continue;
            }

            if (!Carries(drives, cam, shaft))
            {
                continue;
            }

            if (chart is not null && MayDrop(timing, shaft, cam, path))
            {
                acted.Add(new(member, shaft, turns[shaft]!.Value.Numerator.Sign, chart, chain, cam));
            }
        }

        return acted;
    }

    // Whether a shaft can carry a cam for a chart over another: its outline is the lift over its own turn, whatever the crank does meanwhile, so that it must not
    // stand, where the lift would have to jump, nor jump in its speed, where the lift would have a corner, unless the chart jumps with it.
    private bool Carries(IReadOnlyList<Drive> drives, FollowerDrive cam, int shaft)
    {
        var (on, name) = ($"members.{names[cam.Driven]}.{cam.Kind}.on", names[cam.Driver]);
        if (ShaftTurn.IsEven(drives, cam.Driver))
        {
            return true;
        }

        if (cam is not CamDrive || !ShaftTurn.TurnsAlike(drives, cam.Driver))
        {
            problems.Add(on, $"'{name}' does not turn evenly with the crank, and a {(cam is CamDrive ? "cam" : "barrel")} on such a shaft is not worked out", "Put the cam on a shaft that turns evenly; its chart may still run over this one");
            return false;
        }

        if (ShaftTurn.Jumps(drives, cam.Driver) && shaft != cam.Driver)
        {
            problems.Add(on, $"the speed of '{name}' jumps, so a cam on it for a chart over '{names[shaft]}' would have corners", $"Write 'over: {name}', or put the cam on a shaft that turns evenly");
            return false;
        }

        return true;
    }

    // Whether the cam can let its follower go where a move asks for that; else noted.
    private bool MayDrop(TimingSpec timing, int shaft, FollowerDrive cam, string path)
    {
        var move = timing.Moves.ToList().FindIndex(m => m.Law == Timing.Laws.MotionLaws.Drop);
        var (what, remedy) = move < 0 ? ("", "")
            : cam is not CamDrive { Spec: var spec } ? ($"the barrel cam of '{names[cam.Driven]}' leads its roller both ways and can't drop it", "Use a plate cam with a roller or round end, or another law")
            : spec.IsPositive ? ($"the cam of '{names[cam.Driven]}' brings its follower back and can't drop it", $"Remove {(spec.Groove is not null ? "'groove'" : spec.Second is not null ? "'second'" : "'yoke'")} from it, or give another law")
            : spec.Follower.Flat is not null ? ($"the follower '{names[cam.Driven]}' has a flat face, which the tip of the cam holds up until it has slid out from under it: it lets it down and does not drop it", "Give it a roller or a round end, or give another law")
            : !ShaftTurn.IsEven(drives!, cam.Driver) ? ($"'{names[cam.Driver]}', which carries the cam, does not turn evenly, and a drop on such a shaft is not worked out", "Put the cam on a shaft that turns evenly")
            : !ShaftTurn.IsEven(drives!, shaft) ? ($"the chart runs over '{names[shaft]}', which does not turn evenly, and a drop on such a shaft is not worked out", "Let the chart run over the shaft that carries the cam")
            : ("", "");
        if (what.Length > 0)
        {
            problems.Add($"{path}.moves.{move + 1}.law", what, remedy);
        }

        return what.Length == 0;
    }

    private int Shaft(string name, string path)
    {
        var shaft = names.IndexOf(name);
        if (shaft < 0)
        {
            problems.Add(path, $"there is no member '{name}' to time by", Names.Suggest(name, names));
        }
        else if (turns is not null && turns[shaft] is null)
        {
            problems.Add(path, $"'{name}' is not geared to the crank, so a chart can't run over its turn", "Name a shaft that wheels tie to the crank: " + string.Join(", ", names.Where((_, i) => turns[i] is not null)));
            shaft = -1;
        }

        return shaft;
    }

    private TimingChart? Chart(int member, TimingSpec timing, string path)
    {
        var moves = timing.Moves.Select(m => new MoveSpec
        {
            From = m.From,
            To = m.To,
            Reach = m.Reach is { Word: null } r ? r.Number : null,
            ToRest = m.Reach is { Word: not null },
            By = m.By,
            Law = m.Law ?? Timing.Laws.MotionLaws.Default.Name,
            Beats = m.Beats,
            Hold = m.Hold ?? 0,
            Pause = m.Pause ?? 0,
            Points = [.. (m.Points ?? []).Where(p => p.Count == 2).Select(p => (p[0], p[1]))],
            SpeedIn = m.SpeedIn,
            SpeedOut = m.SpeedOut,
        }).ToList();
        for (var i = 0; i < timing.Moves.Count; i++)
        {
            if (timing.Moves[i].Points?.Any(p => p.Count != 2) == true)
            {
                problems.Add($"{path}.moves.{i + 1}.points", "a point of a curve is not a pair", "Write [shaft angle, position]");
                return null;
            }
        }

        switch (TimingChart.Compile(new(timing.Rest, moves), members[member].UnitSize))
        {
            case ChartResult.Compiled done:
                return done.Chart;
            case ChartResult.Refused refused:
                foreach (var p in refused.Problems)
                {
                    problems.Add(p.MoveIndex < 0 ? path : $"{path}.moves.{p.MoveIndex + 1}", p.What.TrimEnd('.'), p.Remedy.TrimEnd('.'));
                }

                break;
        }

        return null;
    }

    private List<Relation> Chain(IReadOnlyList<Drive> drives, int member, string path, out FollowerDrive? cam)
    {
        var chain = new List<Relation>();
        var at = member;
        while (true)
        {
            switch (drives[at])
            {
                case FollowerDrive c:
                    cam = c;
                    return chain;
                case Relation { GoesBack: false } r:
                    problems.Add(path, $"the chart of '{names[member]}' can't be worked back through the {r.Word} of '{names[r.Driven]}': while that stands, '{names[r.Driver]}' turns on", "Remove the chart, since it keeps the time of its driver; or move the member by a cam");
                    cam = null;
                    return chain;
                case Relation r when chain.Count < members.Count:
                    if (Carriers.IsCarriedBy(members, r.Driven, r.Driver))
                    {
                        problems.Add(path, $"the chart of '{names[member]}' can't be worked back through '{names[r.Driven]}': it sits on '{names[r.Driver]}', which drives it", "Put the chart on the driver, or carry the member on something else");
                        cam = null;
                        return chain;
                    }

                    chain.Add(r);
                    at = r.Driver;
                    break;
                case CrankDrive:
                    problems.Add(path, $"no cam moves '{names[member]}': its drives lead to the crank, so it can't follow a chart", "Drive it, or a member before it, by a cam; or remove the chart");
                    cam = null;
                    return chain;
                default:
                    problems.Add(path, $"the drives of '{names[member]}' lead round in a ring", "One of them must lead to a cam");
                    cam = null;
                    return chain;
            }
        }
    }
}
