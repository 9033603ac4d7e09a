using System.Collections.Immutable;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The rods and wires between pins, in their own coordinates (see <see cref="RodFrame"/>): a run of straight lengths from pin to pin, each end left plain, bent into a hole, or wound into an eye.</summary>
internal static class RodParts
{
    /// <summary>Diameter of a rod unless given, mm.</summary>
    private const double Diameter = 2;

    /// <summary>How far a bent end stands out from the run's middle line, mm, and the pin that an eye goes round (common practice, no source).</summary>
    private const double Leg = 6, EyePin = 3;

    /// <summary>The rods, but for those in whose place a coupler stands.</summary>
    public static IEnumerable<Part> Of(Machine machine)
    {
        foreach (var rod in machine.Drives.OfType<RodDrive>().Where(r => !machine.Drives.OfType<CouplerDrive>().Any(c => c.Of == r.Driven)))
        {
            var spec = machine.Design.Members[machine.NameOf(rod.Driven)].Rod!;
            var (pieces, length) = Wire(machine, rod, spec);
            var radius = (spec.Diameter ?? Diameter) / 2;
            yield return new($"{machine.NameOf(rod.Driven)} rod", PartKind.Rod, new(rod.Driven, true), pieces, Math.PI * radius * radius * length, Material.Named(spec.Material ?? "steel"))
            {
                Process = spec is { Bends: null, Ends: null } ? Process.Cut : Process.Bent,
            };
        }
    }

    // The wire's pieces, and the length of its middle line, mm.
    private static (ImmutableArray<ConvexPiece> Pieces, double Length) Wire(Machine machine, RodDrive rod, RodSpec spec)
    {
        var frame = RodFrame.Drawn(machine, rod.Link);
        var wire = spec.Diameter ?? Diameter;
        List<Point3> run = [default, .. (spec.Bends ?? []).Select(b => frame.Undo(b)), new(rod.Length, 0, 0)];
        var (pieces, length) = (ImmutableArray.CreateBuilder<ConvexPiece>(), 0.0);
        Point3[] drawn = [.. run];
        (int Member, int At, int Next)[] ends = [(rod.Driver, 0, 1), (rod.Driven, run.Count - 1, run.Count - 2)];
        foreach (var ((member, at, next), end) in ends.Zip(spec.Ends ?? ["plain", "plain"]))
        {
            var joint = machine.Members[member].Joint;
            var axis = frame.Undo(joint.Turns ? joint.Along : frame.Y);
            if (end == "bend")
            {
                pieces.Add(ConvexPiece.Capsule(run[at], run[at] + Leg * axis, wire / 2));
                length += Leg;
            }
            else if (end == "eye")
            {
                var bore = EyePin + Fits.Running;
                var tube = new TubeSolid(run[at] + -wire / 2 * axis, run[at] + wire / 2 * axis, bore + 2 * wire, bore);
                pieces.AddRange(tube.Pieces());
                length += Math.PI * (bore + wire);
                run[at] += (bore + wire) / 2 * (drawn[next] - drawn[at]).Unit();
            }
        }

        for (var i = 1; i < run.Count; i++)
        {
            pieces.Add(ConvexPiece.Capsule(run[i - 1], run[i], wire / 2));
            length += run[i - 1].DistanceTo(run[i]);
        }

        return (pieces.ToImmutable(), length);
    }
}
