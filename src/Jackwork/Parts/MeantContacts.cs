using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>Which pairs of parts are meant to touch.</summary>
public sealed class MeantContacts
{
    private readonly Machine machine;
    private readonly HashSet<(string, string)> named = [];

    internal MeantContacts(Machine machine)
    {
        this.machine = machine;
        foreach (var pair in machine.Design.Touching ?? [])
        {
            named.Add((pair[0], pair[1]));
            named.Add((pair[1], pair[0]));
        }
    }

    /// <summary>Whether a pair is meant to touch, or is one body, and so left out of the clearance check.</summary>
    /// <remarks>A follower resting on its own cam is judged where it is worked out exactly: in the run on the cams as cut.</remarks>
    public bool Has(Part a, Part b) =>
        a.Body == b.Body || IsNamed(a, b) || IsFollower(a, b) || IsMesh(a, b) || IsBearing(a, b) || HoldsRod(a, b) || HoldsRod(b, a) || IsSlot(a, b);

    private bool IsFollower(Part a, Part b) =>
        (IsPair(a, b, PartKind.Cam, PartKind.Roller, out var cam, out var touch) || IsPair(a, b, PartKind.Cam, PartKind.Pin, out cam, out touch))
        && cam.Name == $"{machine.NameOf(touch.Body.Member)} cam";

    private bool IsNamed(Part a, Part b)
    {
        foreach (var x in Names(a))
        {
            foreach (var y in Names(b))
            {
                if (named.Contains((x, y)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private string[] Names(Part p) => p.Body.IsRod ? [p.Name] : [p.Name, machine.NameOf(p.Body.Member)];

    private static bool IsPair(Part a, Part b, PartKind first, PartKind second, out Part one, out Part other)
    {
        (one, other) = a.Kind == first ? (a, b) : (b, a);
        return one.Kind == first && other.Kind == second;
    }

    private bool IsMesh(Part a, Part b) =>
        a.Kind == PartKind.Wheel && b.Kind == PartKind.Wheel
        && machine.Drives.OfType<RatioDrive>().Any(d => (d.Driver, d.Driven) == (a.Body.Member, b.Body.Member) || (d.Driver, d.Driven) == (b.Body.Member, a.Body.Member));

    // Shafts and axles in the boards, and levers on an axle that runs along their own axis.
    private bool IsBearing(Part a, Part b)
    {
        if (IsPair(a, b, PartKind.Board, PartKind.Shaft, out _, out _) || IsPair(a, b, PartKind.Board, PartKind.Axle, out _, out _))
        {
            return true;
        }

        var axle = a.Bears is not null ? a : b;
        var other = axle == a ? b : a;
        if (axle.Bears is not { } bears || other.Body.Member == Member.Case || other.Body.IsRod || other.Kind != PartKind.Lever)
        {
            return false;
        }

        var (j, k) = (machine.Members[bears].Joint, machine.Members[other.Body.Member].Joint);
        return bears == other.Body.Member || (k.Kind == JointKind.Pivot && j.Along.Cross(k.Along).Length < SameLine && (k.Through - j.Through).Across(j.Along).Length < SameLine);
    }

    /// <summary>Distance and sine within which two axes are one, mm.</summary>
    private const double SameLine = 1e-6;

    private bool HoldsRod(Part rod, Part held) =>
        rod.Body.IsRod && !held.Body.IsRod && (held.Body.Member == rod.Body.Member || held.Body.Member == machine.Drives[rod.Body.Member].Driver);

    private bool IsSlot(Part a, Part b) =>
        machine.Drives.OfType<SlotDrive>().Any(s => (s.PinOn, s.SlotIn) == (a.Body.Member, b.Body.Member) || (s.PinOn, s.SlotIn) == (b.Body.Member, a.Body.Member))
        && a.Kind is PartKind.Lever or PartKind.Pin && b.Kind is PartKind.Lever or PartKind.Pin;
}
