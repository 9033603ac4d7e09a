using System.Collections.Immutable;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Shop.Model;

/// <summary>A body of the piece as a node: what carries it, and how it moves against that.</summary>
/// <remarks>
/// Its origin is the point that its joint is drawn through, so that a pivot only turns and a slide only shifts; a rod's is its first pin,
/// the case's the design's origin. With L the body's frame seen from its carrier's, both as drawn with the crank at 0, a point v from
/// the body's origin O stands at L(O) - C + R v from the carrier's origin C, R the rotation of L.
/// </remarks>
/// <param name="Body">The body.</param>
/// <param name="Name">Name of the member, rod or case.</param>
/// <param name="Carrier">Body that carries it; null for the case.</param>
/// <param name="Origin">Its origin, mm, in the coordinates that its parts are given in.</param>
/// <param name="Place">Where its origin stands from its carrier's, mm.</param>
/// <param name="Rotation">How it is turned against its carrier.</param>
internal sealed record BodyNode(Body Body, string Name, Body? Carrier, Point3 Origin, Track<Vec3> Place, Track<Turn> Rotation)
{
    /// <summary>How far places and rotations read between keys may be from the true ones: mm, and rad (0.05 degrees, which at 100 mm from the axis is 0.09 mm).</summary>
    private const double PlaceOff = 0.05, RotationOff = 0.05 * Math.PI / 180;

    /// <summary>Widest turn from key to key, rad: half of what leaves no doubt which way round is the short one.</summary>
    private const double WidestTurn = Math.PI / 2;

    /// <summary>The case, every member, and every rod and length of cord that has parts.</summary>
    public static IReadOnlyList<BodyNode> All(Proof proof)
    {
        var machine = proof.Machine;
        var frames = new BodyFrames(proof.Motion);
        var rods = proof.Assembly.Parts.Select(p => p.Body).Where(b => b.IsRod).Distinct().OrderBy(b => b.Member).ThenBy(b => b.Piece);
        return
        [
            new(Body.Case, Design.Names.Case, null, default, new(default, []), new(new(0, 0, 0, 1), [])),
            .. machine.Members.Select((m, i) => Of(frames, new(i), m.Name, new(m.Carrier), m.Joint.Through, OriginOf(machine, m.Carrier))),
            .. rods.Select(r => Of(frames, r, NameOf(machine, r), Body.Case, default, default)),
        ];
    }

    private static string NameOf(Machine machine, Body floating) =>
        machine.Drives[floating.Member] is CordDrive ? FormattableString.Invariant($"{machine.NameOf(floating.Member)} cord {floating.Piece + 1}") : $"{machine.NameOf(floating.Member)} rod";

    private static Point3 OriginOf(Machine machine, int member) => member == Member.Case ? default : machine.Members[member].Joint.Through;

    private static BodyNode Of(BodyFrames frames, Body body, string name, Body carrier, Point3 origin, Point3 carrierOrigin)
    {
        var places = new Vec3[frames.Steps + 1];
        var turns = new Turn[frames.Steps + 1];
        for (var i = 0; i < places.Length; i++)
        {
            var seen = frames.At(carrier, i).See(frames.At(body, i));
            (places[i], turns[i]) = (seen.Apply(origin) - carrierOrigin, Turn.Of(seen));
        }

        return new(
            body, name, carrier, origin,
            Track<Vec3>.Of(places, (a, b, t) => a + t * (b - a), (a, b) => (b - a).Length, PlaceOff, double.PositiveInfinity),
            Track<Turn>.Of(turns, (a, b, t) => a.Towards(b, t), (a, b) => a.AngleTo(b), RotationOff, WidestTurn));
    }
}
