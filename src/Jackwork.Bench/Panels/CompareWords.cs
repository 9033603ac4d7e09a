using Jackwork.Checks;
using Jackwork.Comparing;
using Jackwork.Motion;
using Jackwork.Parts;
using static System.FormattableString;

namespace Jackwork.Bench.Panels;

/// <summary>What a comparison found, in words.</summary>
internal static class CompareWords
{
    /// <summary>A row of the shop's table: a part, what is to be done with it, and why.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Task">What is to be done.</param>
    /// <param name="Kind">Which kind of work, for its look: again, fresh, moved or gone.</param>
    /// <param name="Why">Why.</param>
    public sealed record ShopRow(string Part, string Task, string Kind, string Why);

    /// <summary>The whole in a sentence.</summary>
    public static string Headline(Comparison c)
    {
        var rows = Shop(c).ToList();
        var (cams, wheels) = (c.Cams.New.Count + c.Cams.Both.Count(k => k.IsCutAgain), c.Wheels.New.Count + c.Wheels.Both.Count(w => w.IsCutAgain));
        var others = rows.Count(r => r.Kind is "again" or "fresh") - cams - wheels;
        string[] parts = [.. new[] { Count(cams, "cam"), Count(wheels, "wheel"), Count(others, cams + wheels > 0 ? "other part" : "part") }.Where(t => t.Length > 0)];
        return parts.Length == 0 ? "Nothing has to be made again" : $"To be made: {Listed(parts)}";
    }

    /// <summary>What is to be done in the shop: cams and wheels first.</summary>
    public static IEnumerable<ShopRow> Shop(Comparison c)
    {
        foreach (var n in c.Cams.New)
        {
            yield return new($"{n} cam", "cut", "fresh", "new");
        }

        foreach (var k in c.Cams.Both.Where(k => k.IsCutAgain))
        {
            var why = k.HasOtherOutline ? [Invariant($"outline differs by up to {k.Apart.Mm:0.00} mm"), .. k.Plate.Select(s => s.ToString())] : k.Plate.Select(s => s.ToString());
            yield return new($"{k.Name} cam", "cut again", "again", Listed([.. why]) + (k.IsKnown ? "" : "; its motion doesn't close, so that this is no true outline"));
        }

        foreach (var n in c.Wheels.New)
        {
            yield return new(n, "cut", "fresh", "new");
        }

        foreach (var w in c.Wheels.Both.Where(w => w.IsCutAgain))
        {
            yield return new(w.Name, "cut again", "again", Listed([.. w.Teeth.Select(t => t.ToString())]));
        }

        foreach (var row in Others(c))
        {
            yield return row;
        }

        foreach (var n in c.Cams.Gone.Select(n => $"{n} cam").Concat(c.Wheels.Gone).Concat(c.Parts.Gone.Where(n => !IsPlate(c.Before, n))))
        {
            yield return new(n, "no longer needed", "gone", "gone");
        }
    }

    /// <summary>What stays: the cams and wheels by name, the other parts by number.</summary>
    public static string Stays(Comparison c)
    {
        string[] named = [.. c.Cams.Both.Where(k => !k.IsCutAgain).Select(k => $"{k.Name} cam"), .. c.Wheels.Both.Where(w => !w.IsCutAgain).Select(w => w.Name)];
        var others = c.Parts.Both.Count(p => p.Kind is not (PartKind.Cam or PartKind.Wheel) && p.What == PartDifference.None);
        string[] all = [.. named, .. others > 0 ? (string[])[Count(others, named.Length > 0 ? "other part" : "part")] : []];
        return all.Length == 0 ? "nothing" : Listed(all);
    }

    /// <summary>How a member differs.</summary>
    public static string Of(MemberChange m)
    {
        static string Does(JointKind kind, bool did) => kind switch
        {
            JointKind.Pivot => did ? "turned" : "turns",
            JointKind.Slide => did ? "slid" : "slides",
            _ => did ? "ran in a guide" : "runs in a guide",
        };
        var (before, after) = (m.Before.Joint.Kind, m.After.Joint.Kind);
        string?[] said =
        [
            m.Difference is null ? $"{Does(before, true)} and now {Does(after, false)}"
                : m.MovesOtherwise ? Invariant($"up to {Math.Abs(m.Difference.Value.Greatest) / m.After.UnitSize:0.##}{(after == JointKind.Pivot ? "°" : " mm")} {(m.Difference.Value.Greatest > 0 ? "more" : "less")}, at {Where(m.Difference.Value.Crank)}") : null,
            m.Turns is ({ } a, { } b) && a != b ? Invariant($"{a.Value:0.####} turns for a turn of the crank before, {b.Value:0.####} now") : null,
            m.DriveChange,
        ];
        return string.Join("; ", said.Where(s => s is not null)) + ".";
    }

    /// <summary>How a place differs.</summary>
    public static string Of(PlaceChange p)
    {
        var d = p.After - p.Before;
        string[] along = [.. new[] { (d.X, "right", "left"), (d.Y, "up", "down"), (d.Z, "forward", "back") }
            .Where(a => Math.Abs(a.Item1) > Sameness.Mm).Select(a => Invariant($"{Math.Abs(a.Item1):0.##} {(a.Item1 > 0 ? a.Item2 : a.Item3)}"))];
        var moved = p.Distance > Sameness.Mm ? Invariant($"moved by {p.Distance:0.##} mm") + (along.Length > 1 ? $" ({Listed(along)})" : $" {along[0].Split(' ')[1]}") : "";
        var tilted = p.Tilt > Sameness.Rad ? Invariant($"tilted by {Proof.Deg(p.Tilt):0.##}°") : "";
        return $"{char.ToUpperInvariant(p.Subject[0])}{p.Subject[1..]} {Listed([.. new[] { moved, tilted }.Where(t => t.Length > 0)])}.";
    }

    /// <summary>A crank angle, rad, as turn and degrees.</summary>
    public static string Where(double crank)
    {
        var deg = Proof.Deg(crank);
        return Invariant($"turn {Math.Floor(deg / 360) + 1:0}, {deg % 360:0.#}°");
    }

    /// <summary>A number of turns.</summary>
    public static string Turns(int turns) => Count(turns, "turn");

    private static IEnumerable<ShopRow> Others(Comparison c)
    {
        foreach (var n in c.Parts.New.Where(n => !IsPlate(c.After, n)))
        {
            yield return new(n, "make", "fresh", "new");
        }

        foreach (var p in c.Parts.Both.Where(p => p.Kind is not (PartKind.Cam or PartKind.Wheel) && p.IsMadeAgain))
        {
            var (was, now) = (c.Before.Assembly.Parts.FirstOrDefault(b => b.Name == p.Name), c.After.Assembly.Parts.First(a => a.Name == p.Name));
            var sizes = c.Cams.Both.Where(k => p.Name == $"{k.Name} cam hub").SelectMany(k => k.Hub).Concat(c.Wheels.Both.Where(w => p.Name == $"{w.Part} hub").SelectMany(w => w.Hub)).Select(s => s.ToString()).ToArray();
            string?[] why =
            [
                (p.What & PartDifference.Shape) == 0 ? null : sizes.Length > 0 ? Listed(sizes) : "another shape",
                (p.What & PartDifference.Material) == 0 ? null : was is null || was.Material.Name == now.Material.Name ? now.Process.Words() : $"{was.Material.Name} to {now.Material.Name}",
            ];
            yield return new(p.Name, now.Process == Process.Bought ? "get another" : "make again", "again", string.Join("; ", why.Where(w => w is not null)));
        }

        foreach (var p in c.Parts.Both.Where(p => !p.IsMadeAgain && p.What != PartDifference.None))
        {
            var why = (p.What & PartDifference.Place) != 0 ? Invariant($"moved by {p.Moved:0.##} mm as drawn") : "sits on another member";
            yield return new(p.Name, "set elsewhere", "moved", why);
        }
    }

    // Cams and wheels are told by their own lists.
    private static bool IsPlate(Proof proof, string part) => proof.Assembly.Parts.Any(p => p.Name == part && p.Kind is PartKind.Cam or PartKind.Wheel);

    private static string Count(int n, string what) => n == 0 ? "" : Invariant($"{n} {what}{(n == 1 ? "" : "s")}");

    private static string Listed(string[] all) => all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
}
