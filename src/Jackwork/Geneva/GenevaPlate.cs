using Jackwork.Geometry;

namespace Jackwork.Geneva;

/// <summary>One plate of a Geneva wheel or its driver.</summary>
/// <param name="Name">Its name.</param>
/// <param name="OnDriver">Whether it turns with the driver; else with the wheel.</param>
/// <param name="Rim">Its outside about its own axis, mm; see <see cref="GenevaOutlines"/>.</param>
/// <param name="Hole">What is cut out of its middle; null where it has a bore.</param>
/// <param name="Bore">Diameter of its bore, mm.</param>
/// <param name="Pin">Where the hole for the pin is, mm; null for none.</param>
/// <param name="From">Its face away from the pin plate, mm from the middle of the slotted plate.</param>
/// <param name="To">Its other face, mm.</param>
public sealed record GenevaPlate(string Name, bool OnDriver, Outline Rim, Outline? Hole, double? Bore, Point2? Pin, double From, double To)
{
    /// <summary>Whether a hub holds it on its shaft; what is beside it is glued or screwed to it.</summary>
    public bool HasHub => Pin is not null || (!OnDriver && Bore is not null);
}
