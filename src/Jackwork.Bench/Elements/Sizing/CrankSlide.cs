using Jackwork.Bench.Elements.Adding;
using Jackwork.Bench.Sessions;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Linkages;
using Jackwork.Motion;

namespace Jackwork.Bench.Elements.Sizing;

/// <summary>A slide that a rod from a shaft drives, seen along the shaft: x away from it along the slide, y to the left of that about the shaft's direction, mm from its axis.</summary>
internal sealed class CrankSlide
{
    /// <summary>Sine of the angle by which the slide may miss being square to the shaft.</summary>
    private const double Square = 1e-6;

    private readonly Work work;
    private readonly int slide;
    private readonly RodDrive rod;
    private readonly Joint shaft;
    private readonly Vec3 out1;
    private readonly Vec3 left;

    private CrankSlide(Work work, int slide, RodDrive rod, Joint shaft, Vec3 along)
    {
        (this.work, this.slide, this.rod, this.shaft) = (work, slide, rod, shaft);
        out1 = (rod.DrivenPin - rod.DriverPin).Dot(along) < 0 ? -along : along;
        left = shaft.Along.Cross(out1);
        (Crank, Pin) = (Flat(rod.DriverPin), Flat(rod.DrivenPin));
    }

    /// <summary>The crank's pin as drawn.</summary>
    public Vec2 Crank { get; }

    /// <summary>The slide's pin as drawn.</summary>
    public Vec2 Pin { get; }

    /// <summary>How far the two pins stand apart along the shaft, mm.</summary>
    public double Aside => (rod.DrivenPin - rod.DriverPin).Dot(shaft.Along);

    /// <summary>Which way the shaft goes: +1 counter-clockwise in the view, else -1.</summary>
    public int Way => Math.Sign((double)work.Machine.Turns[rod.Driver]!.Value.Numerator);

    /// <summary>The sizes as drawn; null where the crank can't go round.</summary>
    public SliderCrank? Sizes => new SliderCrank(Crank.Length, Length, Math.Abs(Pin.Y)) is var s && s.Rod > s.Crank + s.Offset && s.Crank > 0 ? s : null;

    /// <summary>The rod seen along the shaft, mm.</summary>
    public double Length => Math.Sqrt(rod.Length * rod.Length - Aside * Aside);

    /// <summary>The rod of a member; null where that is no slide square to a shaft on the same carrier, with its crank's pin off the axis.</summary>
    public static CrankSlide? Of(Work work, int slide)
    {
        var machine = work.Machine;
        return machine.Drives[slide] is RodDrive rod && machine.Turns[rod.Driver] is not null && machine.Members[slide] is { Joint: { Kind: JointKind.Slide } line } member
            && machine.Members[rod.Driver] is { Joint: { Kind: JointKind.Pivot } shaft } driver && driver.Carrier == member.Carrier && Math.Abs(line.Along.Dot(shaft.Along)) < Square
            && (rod.DriverPin - shaft.Through).Across(shaft.Along).Length > 0
            ? new(work, slide, rod, shaft, line.Along)
            : null;
    }

    /// <summary>A point seen along the shaft.</summary>
    public Vec2 Flat(Point3 p) => new((p - shaft.Through).Dot(out1), (p - shaft.Through).Dot(left));

    /// <summary>A point of the view in space.</summary>
    /// <param name="flat">The point.</param>
    /// <param name="level">A point at the same height along the shaft.</param>
    public Point3 Solid(Vec2 flat, Point3 level) => shaft.Foot(level) + flat.X * out1 + flat.Y * left;

    /// <summary>The design with other sizes: the crank's pin at its angle as drawn, the slide's line moved to its offset, with what is given by them.</summary>
    /// <param name="text">The design's text.</param>
    /// <param name="crank">Throw of the crank, mm.</param>
    /// <param name="length">The rod seen along the shaft, mm.</param>
    /// <param name="offset">Where the slide's line passes the axis, y of the view, mm.</param>
    /// <param name="point">A point of the rod's coupler, if it is one, for where the two pins then stand.</param>
    public TextEdit Put(string text, double crank, double length, double offset, Func<Vec2, Vec2, Vec2>? point = null)
    {
        var machine = work.Machine;
        var (name, spec) = (machine.NameOf(slide), machine.Design.Members[machine.NameOf(slide)]);
        var from = crank / Crank.Length * Crank;
        var to = new Vec2(from.X + Math.Sqrt(length * length - (offset - from.Y) * (offset - from.Y)), offset);
        var (a, b) = (Solid(from, rod.DriverPin), Solid(to, rod.DrivenPin));
        List<(string Path, string Value)> edits = [($"members.{name}.rod.pins", $"[{StartSite.P(a)}, {StartSite.P(b)}]")];
        if (spec.Rod!.Length is not null)
        {
            edits.Add(($"members.{name}.rod.length", DesignText.Number(Math.Sqrt(length * length + Aside * Aside), 6)));
        }

        if (spec.Slide!.Through is { } through)
        {
            edits.Add(($"members.{name}.slide.through", StartSite.P(through + (b - rod.DrivenPin))));
        }

        foreach (var coupler in machine.Drives.OfType<CouplerDrive>().Where(c => c.Of == slide))
        {
            var (member, by) = (machine.NameOf(coupler.Driven), machine.Members[coupler.Driven].Carrier == slide ? b - rod.DrivenPin : a - rod.DriverPin);
            edits.Add(($"members.{member}.pivot.through", StartSite.P(machine.Members[coupler.Driven].Joint.Through + by)));
            if (point is not null)
            {
                edits.Add(($"members.{member}.coupler.point", StartSite.P(Solid(point(from, to), machine.Design.Members[member].Coupler!.Point ?? machine.Members[coupler.Driven].Joint.Through))));
            }
        }

        TextEdit? done = null;
        foreach (var (path, value) in edits)
        {
            var edit = DesignText.Set(done?.Text ?? text, path, value);
            if (!edit.IsDone)
            {
                return TextEdit.Refused(text, edit.Refusal!);
            }

            done = edit;
        }

        return done!;
    }
}
