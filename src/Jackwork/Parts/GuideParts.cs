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

    /// <summary>Room that a guide leaves the pin on its rod, in diameters of the rod.</summary>
    private const double PinRoom = 2;

    /// <summary>Least and greatest coordinate of a slide over the performance, mm.</summary>
    public static (double Low, double High) Travel(Motion.Motion motion, int m) => motion.Range(m);

    /// <summary>How far a rod must reach beyond its pin, mm, for a guide of the usual length to stand clear of the pin throughout.</summary>
    /// <param name="travel">The slide's travel.</param>
    /// <param name="rod">Diameter of the rod, mm.</param>
    public static double Reach((double Low, double High) travel, double rod) => travel.High - travel.Low + (PinRoom + Length) * rod;

    /// <summary>Where the guide stands, mm along the slide's direction from its rod's point as drawn; null where the design wants none, or gives no place for one and the rod leaves no room for one longer than it is thick.</summary>
    /// <param name="spec">What the design says of it.</param>
    /// <param name="ends">Where the rod begins and ends as drawn, mm.</param>
    /// <param name="travel">The slide's travel.</param>
    /// <param name="rod">Diameter of the rod, mm.</param>
    /// <param name="pinned">Whether a pin stands on the rod's point, which no guide can pass.</param>
    public static (double From, double To)? Place(GuideSpec? spec, (double From, double To) ends, (double Low, double High) travel, double rod, bool pinned)
    {
        // What the rod always covers, ahead of its pin or behind it, whichever is longer.
        var (from, to) = (ends.From + travel.High, ends.To + travel.Low);
        if (pinned)
        {
            var (ahead, behind) = (Math.Max(from, travel.High + PinRoom * rod), Math.Min(to, travel.Low - PinRoom * rod));
            (from, to) = to - ahead >= behind - from ? (ahead, to) : (from, behind);
        }

        var length = spec?.Length ?? (spec?.At is null ? Math.Min(Length * rod, to - from) : Length * rod);
        if (length <= 0 || (spec?.At is null && to - from < Shortest * rod))
        {
            return null;
        }

        var middle = spec?.At ?? (from + to) / 2;
        return (middle - length / 2, middle + length / 2);
    }

    /// <summary>The guide of a slide's rod; null where it has none.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="place">Where it stands, mm along the slide's direction from <paramref name="point"/>.</param>
    /// <param name="point">The point of the rod that places count from, as drawn, mm.</param>
    /// <param name="diameter">Diameter of the rod, mm.</param>
    public static Part Of(Machine machine, Part rod, (double From, double To) place, Geometry.Point3 point, double diameter)
    {
        var member = machine.Members[rod.Body.Member];
        var spec = machine.Design.Members[member.Name].Body?.Guide;
        var along = member.Joint.Along;
        var tube = new TubeSolid(point + place.From * along, point + place.To * along, spec?.Outside ?? Outside * diameter, diameter + Fits.Running);
        return tube.Part($"{member.Name} guide", PartKind.Guide, new(member.Carrier), Material.Named(spec?.Material ?? "brass")) with { RunsOn = tube.Line };
    }
}
