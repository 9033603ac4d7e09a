using System.Collections.Immutable;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The turned parts of mechanisms and their hubs as solids.</summary>
internal static class TurnedParts
{
    /// <summary>A turned part and its hub. Its bore is filled, as by its shaft.</summary>
    public static IEnumerable<Part> Of(Machine machine, Turned turned)
    {
        var joint = machine.Members[turned.Member].Joint;
        ImmutableArray<ConvexPiece> pieces = [.. turned.Profile.Zip(turned.Profile.Skip(1)).Where(p => p.Second.Station > p.First.Station).Select(p => Slice(joint, p.First, p.Second))];
        yield return new(turned.Name, PartKind.Turned, new(turned.Member), pieces, turned.Volume, turned.Material)
        {
            RoundAbout = (joint.Through, joint.Along),
            Process = turned.Bought ? Process.Bought : Process.Turned,
        };
        if (turned.Hub is not { } hub)
        {
            yield break;
        }

        var face = hub.Above ? turned.Profile[^1].Station : turned.Profile[0].Station;
        foreach (var part in PlateParts.Hub($"{turned.Name} hub", turned.Member, joint, face, 0, hub.Diameter / 2, turned.Bore, hub.Length, hub.Above ? "ahead" : "behind", hub.Grub))
        {
            yield return part;
        }
    }

    private static ConvexPiece Slice(Joint joint, (double Station, double Radius) a, (double Station, double Radius) b) => a.Radius == b.Radius
        ? ConvexPiece.Cylinder(Station.At(joint, a.Station), Station.At(joint, b.Station), a.Radius)
        : ConvexPiece.Frustum(Station.At(joint, a.Station), a.Radius, Station.At(joint, b.Station), b.Radius);
}
