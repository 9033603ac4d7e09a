using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>How far each pair of parts must keep apart, and which are meant to touch.</summary>
/// <remarks>
/// Left out are parts of one body, and contacts that are judged elsewhere by their exact shapes: a follower on its own cam (the run on
/// the cams as cut), teeth in mesh, pins in slots, the parts of one mechanism (its own checks). Left out too are a rod and what holds its ends, a cord and the members that it is led by,
/// a lever, a wheel or a mechanism's plate and
/// the axle or shaft through it, and what the design names under <c>touching</c>, since these are drawn one within the other.
/// A shaft or axle may touch the board that it runs in, but no deeper than <see cref="JournalDepth"/>.
/// </remarks>
public sealed class MeantContacts
{
    /// <summary>How deep a shaft's solid may stand in that of its board, mm: the flats of its bored hole take up to a part of this; more is a hole too small.</summary>
    private const double JournalDepth = 0.1;

    private readonly Machine machine;
    private readonly Dictionary<(string, string), double?> named = [];

    internal MeantContacts(Machine machine)
    {
        this.machine = machine;
        foreach (var pair in machine.Design.Touching ?? [])
        {
            named[(pair[0], pair[1])] = null;
        }

        foreach (var pair in machine.Design.Apart ?? [])
        {
            named[(pair.Parts[0], pair.Parts[1])] = pair.Least;
        }
    }

    /// <summary>The names under <c>touching</c> and <c>apart</c> that are neither a part's nor a member's.</summary>
    /// <param name="parts">All parts.</param>
    public IReadOnlyList<string> Unknown(IReadOnlyList<Part> parts)
    {
        var known = parts.SelectMany(p => Names(p)).ToHashSet();
        return [.. named.Keys.SelectMany(k => (string[])[k.Item1, k.Item2]).Where(n => !known.Contains(n)).Distinct()];
    }

    /// <summary>The clearance that a pair must keep, mm; below 0 how deep they may stand in each other; null where the pair isn't judged.</summary>
    /// <param name="a">One part.</param>
    /// <param name="b">The other.</param>
    /// <param name="usual">The clearance of all pairs of which nothing else is known, mm.</param>
    public double? Least(Part a, Part b, double usual)
    {
        if (a.Body == b.Body)
        {
            return null;
        }

        if (IsNamed(a, b, out var least))
        {
            return least;
        }

        if (IsFollower(a, b) || IsMesh(a, b) || IsOnAxle(a, b) || HoldsRod(a, b) || HoldsRod(b, a) || IsSlot(a, b) || IsOneMechanism(a, b) || IsLinkPin(a, b) || IsLinkPin(b, a))
        {
            return null;
        }

        return IsPair(a, b, PartKind.Board, PartKind.Shaft, out _, out _) || IsPair(a, b, PartKind.Board, PartKind.Axle, out _, out _) ? -JournalDepth : usual;
    }

    private bool IsFollower(Part a, Part b) =>
        (IsPair(a, b, PartKind.Cam, PartKind.Roller, out var cam, out var touch) || IsPair(a, b, PartKind.Cam, PartKind.Pin, out cam, out touch))
        && cam.Name == $"{machine.NameOf(touch.Body.Member)} cam";

    // What is named under apart, part by part, goes before what is named under touching.
    private bool IsNamed(Part a, Part b, out double? least)
    {
        (least, var found) = (null, false);
        foreach (var x in Names(a))
        {
            foreach (var y in Names(b))
            {
                foreach (var key in (ReadOnlySpan<(string, string)>)[(x, y), (y, x)])
                {
                    if (named.TryGetValue(key, out var given))
                    {
                        (found, least) = (true, least ?? given);
                    }
                }
            }
        }

        return found;
    }

    // All lengths of a cord go by its one name too.
    private string[] Names(Part p) =>
        p.Kind == PartKind.Cord ? [p.Name, $"{machine.NameOf(p.Body.Member)} cord"] : p.Body.IsRod ? [p.Name] : [p.Name, machine.NameOf(p.Body.Member)];

    private static bool IsPair(Part a, Part b, PartKind first, PartKind second, out Part one, out Part other)
    {
        (one, other) = a.Kind == first ? (a, b) : (b, a);
        return one.Kind == first && other.Kind == second;
    }

    private bool IsMesh(Part a, Part b) =>
        a.Kind == PartKind.Wheel && b.Kind == PartKind.Wheel
        && machine.Drives.OfType<GearDrive>().Any(d => (d.Driver, d.Driven) == (a.Body.Member, b.Body.Member) || (d.Driver, d.Driven) == (b.Body.Member, a.Body.Member));

    // A pin of a coupler stands in what it joins: the coupler's carrier and the member at its other end.
    private bool IsLinkPin(Part pin, Part held) =>
        pin is { Kind: PartKind.Pin, Serves: { } s } && machine.Drives[s.Member] is CouplerDrive c
        && !held.Body.IsRod && (held.Body.Member == c.Driver || held.Body.Member == machine.Members[c.Driven].Carrier);

    private static bool IsOneMechanism(Part a, Part b) => a.Serves is { } one && b.Serves == one;

    // Levers, wheels, and plates of mechanisms with their hubs, that turn or stand on an axle or a shaft along their own axis.
    private bool IsOnAxle(Part a, Part b)
    {
        var axle = Runs(a) is not null ? a : b;
        var other = axle == a ? b : a;
        if (Runs(axle) is not { } bears || other.Body.IsRod || other.Kind is not (PartKind.Lever or PartKind.Wheel or PartKind.Plate or PartKind.Turned or PartKind.Hub))
        {
            return false;
        }

        var j = machine.Members[bears].Joint;
        bool Along(Point3 through, Vec3 along) => j.Along.Cross(along).Length < SameLine && (through - j.Through).Across(j.Along).Length < SameLine;
        return bears == other.Body.Member
            || ((other.Body.Member == Member.Case ? other.Kind != PartKind.Lever : machine.Members[other.Body.Member].Joint is { Kind: JointKind.Pivot } k && Along(k.Through, k.Along))
                && (other.Kind == PartKind.Lever || (other.Plates is [{ Frame: var f }, ..] && Along(f.Origin, f.Z))));
    }

    // The member along whose axis an axle or shaft runs; null for all else.
    private static int? Runs(Part p) => p.Bears ?? (p.Kind == PartKind.Shaft && p.RoundAbout is not null && p.Body.Member != Member.Case && !p.Body.IsRod ? p.Body.Member : null);

    /// <summary>Distance and sine within which two axes are one, mm.</summary>
    private const double SameLine = 1e-6;

    private bool HoldsRod(Part rod, Part held) =>
        rod.Body.IsRod && !held.Body.IsRod && (machine.Drives[rod.Body.Member] is CordDrive cord
            ? held.Body.Member != Member.Case && cord.Run.Leads.Any(l => l.Member == held.Body.Member)
            : held.Body.Member == rod.Body.Member || machine.Drives[rod.Body.Member].Drivers.Contains(held.Body.Member));

    private bool IsSlot(Part a, Part b) =>
        machine.Drives.OfType<SlotDrive>().Any(s => (s.PinOn, s.SlotIn) == (a.Body.Member, b.Body.Member) || (s.PinOn, s.SlotIn) == (b.Body.Member, a.Body.Member))
        && a.Kind is PartKind.Lever or PartKind.Pin && b.Kind is PartKind.Lever or PartKind.Pin;
}
