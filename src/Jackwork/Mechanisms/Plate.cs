using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Meshes;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Mechanisms;

/// <summary>A flat plate of a mechanism: cut to an outline, with openings, drilled holes and, where it sits on a shaft, a bore.</summary>
/// <remarks>
/// All is given as drawn, in the x-y plane of its frame; the origin lies within the outside. A plate on a shaft has its frame on the
/// shaft's axis, z along it (either way): <see cref="On"/> gives the frame that cams and wheels have too.
/// </remarks>
/// <param name="Name">Its name, unique in the piece.</param>
/// <param name="Member">The member that it moves with, or <see cref="Motion.Member.Case"/>.</param>
/// <param name="Rim">Its outside, counter-clockwise, mm.</param>
/// <param name="Frame">Where it stands as drawn.</param>
/// <param name="Bottom">Lower face, mm along the frame's z.</param>
/// <param name="Top">Upper face, mm along the frame's z, above <paramref name="Bottom"/>.</param>
public sealed record Plate(string Name, int Member, Outline Rim, Frame Frame, double Bottom, double Top)
{
    /// <summary>What is cut out of it, each counter-clockwise: a plate without bore may have one about the origin.</summary>
    public ImmutableArray<Outline> Openings { get; init; } = [];

    /// <summary>What stands for outside and openings where clearance is asked, such as the tip circle of teeth; null where they do themselves. One that is round about the origin without openings is held as the cylinder that it is.</summary>
    public (Outline Rim, ImmutableArray<Outline> Openings)? Shell { get; init; }

    /// <summary>Its closed surface as drawn, mm, where it is more than a plate, such as a drum with a groove; null where rim, openings and holes say it all.</summary>
    public TriangleMesh? Surface { get; init; }

    /// <summary>Holes to drill, filled by what stands in them.</summary>
    public ImmutableArray<Hole> Holes { get; init; } = [];

    /// <summary>Diameter of the bore for its shaft about the origin, mm; null for none.</summary>
    public double? Bore { get; init; }

    /// <summary>Its hub; null for none.</summary>
    public PlateHub? Hub { get; init; }

    /// <summary>Whether its shaft ends flush with the face away from its hub, as at a fork.</summary>
    public bool EndsShaft { get; init; }

    /// <summary>What is engraved on it beside its name.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether it floats between the two pins of its member's drive, as a rod does; its frame is then seen from the link's (see <see cref="Parts.RodFrame"/>).</summary>
    public bool OnLink { get; init; }

    /// <summary>What it is made of.</summary>
    public Material Material { get; init; } = Material.Named("birch-plywood");

    /// <summary>The plane of plates on a shaft: x to the right and y up as drawn, seen from the tip of the axis, z along it; see <see cref="Cams.CamPlane"/>.</summary>
    public static Frame On(Joint shaft)
    {
        var up = shaft.Along.AnyPerpendicular();
        return new(up.Cross(shaft.Along), up, shaft.Along, shaft.Through);
    }

    /// <summary>The same plate given in the frame that cams and wheels on its shaft have: drawn so, its timing mark points up with theirs.</summary>
    /// <param name="shaft">The joint of the shaft that it sits on.</param>
    public Plate Upright(Joint shaft)
    {
        var on = On(shaft);
        var isUp = Frame.Z.Dot(on.Z) > 0;
        var (turn, station) = (Math.Atan2(Frame.X.Dot(on.Y), Frame.X.Dot(on.X)), (Frame.Origin - on.Origin).Dot(on.Z));

        // Seen from its other side it is a mirror image.
        Outline Seen(Outline o) => (isUp ? o : o.Mirrored()).Turned(turn);
        return this with
        {
            Frame = on,
            Rim = Seen(Rim),
            Openings = [.. Openings.Select(Seen)],
            Shell = Shell is var (rim, openings) ? (Seen(rim), [.. openings.Select(Seen)]) : null,
            Holes = [.. Holes.Select(h => h with { Centre = new Point2(h.Centre.X, isUp ? h.Centre.Y : -h.Centre.Y).Turned(turn) })],
            Bottom = isUp ? station + Bottom : station - Top,
            Top = isUp ? station + Top : station - Bottom,
            Hub = Hub is { } hub ? hub with { Above = hub.Above == isUp } : null,
        };
    }
}
