using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>What every part sweeps over the performance.</summary>
internal sealed class Sweep
{
    /// <summary>Distance (mm) and sine within which two lines are one.</summary>
    private const double SameLine = 1e-6;

    /// <summary>Level of the stretches over which swept boxes are made: 2^3 steps.</summary>
    private const int BoxLevel = 3;

    private readonly Machine machine;

    /// <summary>The parts of an assembly in their motion.</summary>
    public Sweep(Motion.Motion motion, IReadOnlyList<Part> parts)
    {
        machine = motion.Machine;
        Bodies = new(motion);
        Paths = new(Bodies, machine);
        Seen = new Body[parts.Count];
        Boxes = new Bounds[parts.Count];
        for (var i = 0; i < parts.Count; i++)
        {
            Seen[i] = SpinsInPlace(parts[i]) ? new(machine.Members[parts[i].Body.Member].Carrier) : parts[i].Body;
            Boxes[i] = Swept(parts[i], Paths.Of(Seen[i], Member.Case));
        }
    }

    /// <summary>Where the bodies stand.</summary>
    public BodyFrames Bodies { get; }

    /// <summary>How the bodies move.</summary>
    public Paths Paths { get; }

    /// <summary>For each part what it seems to move with: its body, or what carries that where the part is round about its axis and so looks the same at every angle.</summary>
    public Body[] Seen { get; }

    /// <summary>For each part a box that it never leaves, in space.</summary>
    public Bounds[] Boxes { get; }

    private bool SpinsInPlace(Part part) =>
        part is { Body: { IsRod: false, Member: var m }, RoundAbout: { } line } && m != Member.Case
        && machine.Members[m].Joint is { Kind: JointKind.Pivot } j
        && j.Along.Cross(line.Along).Length < SameLine && (line.Through - j.Through).Across(j.Along).Length < SameLine;

    // The box round the part at the ends of short stretches, grown by what it bows out between them.
    private Bounds Swept(Part part, BodyPath path)
    {
        var box = part.Box;
        if (path.IsStill)
        {
            return box;
        }

        var mover = new Mover(part, path);
        var (middle, half) = (box.Middle, 0.5 * (box.Most - box.Least));
        var before = 0.0;
        Bounds? all = null;
        for (var k = 0; k << BoxLevel < Bodies.Steps + (1 << BoxLevel); k++)
        {
            // At each end of a stretch, grown by the larger bow on either side.
            var place = Math.Min(k << BoxLevel, Bodies.Steps);
            var after = place < Bodies.Steps ? mover.Bow(Stretch.At(BoxLevel, k, Bodies.Steps)) : 0;
            var bow = Math.Max(before, after);
            before = after;
            var f = path.At(place);
            var c = f.Apply(middle);
            var reach = new Vec3(
                bow + Math.Abs(f.X.X) * half.X + Math.Abs(f.Y.X) * half.Y + Math.Abs(f.Z.X) * half.Z,
                bow + Math.Abs(f.X.Y) * half.X + Math.Abs(f.Y.Y) * half.Y + Math.Abs(f.Z.Y) * half.Z,
                bow + Math.Abs(f.X.Z) * half.X + Math.Abs(f.Y.Z) * half.Y + Math.Abs(f.Z.Z) * half.Z);
            var here = new Bounds(c + -1 * reach, c + reach);
            all = all?.Around(here) ?? here;
        }

        return all!.Value;
    }
}
