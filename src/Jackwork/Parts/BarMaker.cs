using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Makes the bars, pins and spindles of one lever.</summary>
/// <param name="name">Name of the member.</param>
/// <param name="member">Its index.</param>
/// <param name="joint">Its pivot.</param>
/// <param name="half">Half the thickness of its bars, mm.</param>
/// <param name="radius">Half their width, mm.</param>
/// <param name="material">What they are made of.</param>
internal sealed class BarMaker(string name, int member, Joint joint, double half, double radius, Material material)
{
    private static readonly Material Steel = Material.Named("steel");

    /// <summary>A bar in the plane at a station, from the axis to below a pin.</summary>
    public Part Bar(string what, double plane, Point3 pin)
    {
        var (from, to) = (Station.At(joint, plane), Into(plane, pin));
        var length = from.DistanceTo(to);
        var piece = ConvexPiece.Bar(from + -half * joint.Along, radius, to + -half * joint.Along, radius, 2 * half * joint.Along);
        return new(name + what, PartKind.Lever, new(member), [piece], (2 * radius * length + Math.PI * radius * radius) * 2 * half, material);
    }

    /// <summary>A pin from the bar's plane to where it is drawn.</summary>
    public Part Pin(string what, double plane, Point3 pin, double diameter)
    {
        var foot = Into(plane, pin);
        return new(name + what, PartKind.Pin, new(member), [ConvexPiece.Cylinder(foot, pin, diameter / 2)], Math.PI * diameter * diameter / 4 * foot.DistanceTo(pin), Steel);
    }

    /// <summary>A round rod on the axis between two stations.</summary>
    public Part Spindle(string what, Body body, double from, double to, double diameter) =>
        new(name + what, PartKind.Axle, body, [ConvexPiece.Cylinder(Station.At(joint, from), Station.At(joint, to), diameter / 2)], Math.PI * diameter * diameter / 4 * (to - from), Steel) { RoundAbout = (joint.Through, joint.Along) };

    private Point3 Into(double plane, Point3 pin) => pin + (plane - Station.Of(joint, pin)) * joint.Along;
}
