using Jackwork.Design;
using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>What a slide's rod runs in.</summary>
internal static class GuideParts
{
    /// <summary>Length unless given, in diameters of the rod: a guide shorter than two would tilt and bind (common practice, no source).</summary>
    private const double Length = 3, Shortest = 1;

    /// <summary>Outside diameter unless given, in diameters of the rod.</summary>
    private const double Outside = 2;

    /// <summary>Stretch that a rod covers over the whole performance, mm along the slide's direction from its pin as drawn; empty (to below from) where it moves by more than its length.</summary>
    /// <param name="motion">The performance.</param>
    /// <param name="m">The slide.</param>
    /// <param name="from">Where the rod begins as drawn, mm.</param>
    /// <param name="to">Where it ends.</param>
    public static (double From, double To) Always(Motion.Motion motion, int m, double from, double to)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var q in motion.Of(m))
        {
            (low, high) = (Math.Min(low, q.Value), Math.Max(high, q.Value));
        }

        return (from + high, to + low);
    }

    /// <summary>Where the guide stands, mm along the slide's direction from its pin as drawn; null where the design wants none, or gives no place for one and the rod leaves no room for one longer than it is thick.</summary>
    /// <param name="spec">What the design says of it.</param>
    /// <param name="always">The stretch that the rod always covers.</param>
    /// <param name="rod">Diameter of the rod, mm.</param>
    public static (double From, double To)? Place(GuideSpec? spec, (double From, double To) always, double rod)
    {
        var room = always.To - always.From;
        var length = spec?.Length ?? (spec?.At is null ? Math.Min(Length * rod, room) : Length * rod);
        if (length <= 0 || (spec?.At is null && room < Shortest * rod))
        {
            return null;
        }

        var middle = spec?.At ?? (always.From + always.To) / 2;
        return (middle - length / 2, middle + length / 2);
    }

    /// <summary>The guide of a slide's rod; null where it has none.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="place">Where it stands, mm along the slide's direction from <paramref name="pin"/>.</param>
    /// <param name="pin">The slide's pin as drawn, mm.</param>
    /// <param name="diameter">Diameter of the rod, mm.</param>
    public static Part Of(Machine machine, Part rod, (double From, double To) place, Geometry.Point3 pin, double diameter)
    {
        var member = machine.Members[rod.Body.Member];
        var spec = machine.Design.Members[member.Name].Body?.Guide;
        var along = member.Joint.Along;
        var tube = new TubeSolid(pin + place.From * along, pin + place.To * along, spec?.Outside ?? Outside * diameter, diameter + Fits.Running);
        return tube.Part($"{member.Name} guide", PartKind.Guide, new(member.Carrier), Material.Named(spec?.Material ?? "brass")) with { RunsOn = tube.Line };
    }
}
