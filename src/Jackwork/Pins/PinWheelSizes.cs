using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Pins;

/// <summary>The sizes of two wheels with pins all round, mm.</summary>
/// <remarks>
/// <para>d pins, e room between what passes, along each axis from where the axes meet towards the pins, or on parallel shafts from the middle of the pins towards the
/// driven's plate. Pins along parallel shafts: the plates face each other across a gap that both wheels' pins reach across. At right angles the driven's plate
/// stands over the driver's, as of <see cref="IntermittentSizes"/>.</para>
/// <para>Pegs stand in the middle of their plate's rim, 2 d deep. On parallel shafts the rim is d/2 + e within its circle, with the other's plate beside it; at right
/// angles either rim is e from the face of the other plate.</para>
/// <para>Proportions are common practice, no source.</para>
/// </remarks>
/// <param name="stand">How the pins stand.</param>
/// <param name="law">How the wheels go.</param>
/// <param name="pin">d.</param>
/// <param name="thickness">Thickness of each plate; null for the usual.</param>
internal sealed class PinWheelSizes(PinStand stand, PinWheelLaw law, double pin, double? thickness)
{
    /// <summary>How deep a peg sits in the rim, and how thick its plate is unless given, in diameters of the pegs (common practice, no source).</summary>
    private const double Deep = 2, Thick = 3;

    /// <summary>How far a peg reaches past where it is last touched, in diameters (common practice, no source).</summary>
    private const double Spare = 0.25;

    /// <summary>Places of a pitch at which it is looked how far out a peg is touched.</summary>
    private const int Looked = 64;

    /// <summary>The driver.</summary>
    public WheelSize Driver => Of(true);

    /// <summary>The driven.</summary>
    public WheelSize Driven => Of(false);

    private PinPair Pair => law.Pair;

    // The ends of the driven's pins from the driver's axis: a pin below the lowest place where one carries.
    private double Lowest => Pair.DriverCircle * Math.Cos(Math.Abs(law.Middle) + law.DriverPitch / 2) - pin;

    private WheelSize Of(bool driver)
    {
        var (circle, other) = driver ? (Pair.DriverCircle, Pair.DrivenCircle) : (Pair.DrivenCircle, Pair.DriverCircle);
        var (plate, room, outward) = (thickness ?? PlateParts.Thickness, IntermittentSizes.Apart, driver ? -1 : 1);
        if (driver ? stand.DriverPegs : stand.DrivenPegs)
        {
            var (half, middle) = ((thickness ?? Thick * pin) / 2, stand.Crossed ? other : 0);
            var rim = circle - room - (stand.Crossed ? half : pin / 2);
            return new(true, rim, middle - half, middle + half, rim - Deep * pin, End(driver));
        }

        if (stand.Crossed)
        {
            var near = driver ? other + pin : other + pin + room;
            return new(false, circle + pin, near, near + plate, near + plate, driver ? other - ((CrossedPins)Pair).Tip : Lowest);
        }

        var face = outward * (room + (stand.IsAlong ? pin : (thickness ?? Thick * pin) / 2));
        return new(false, circle + pin, face, face + outward * plate, face + outward * plate, -outward * pin);
    }

    private double End(bool driver) => (Pair is SwappedPins s ? (s.Given, !driver) : (Pair, driver)) switch
    {
        (PegAndPins p, _) => p.Tip,
        (CrossedPegs c, true) => c.Tip,
        (CrossedPegs c, false) => Math.Max(c.DrivenCircle, Enumerable.Range(0, Looked + 1).Max(i => c.Touched(Carries((double)i / Looked)))) + Spare * pin,
        _ => throw new InvalidOperationException("A wheel of pins along its shaft has no pegs."),
    };

    // Where the pair's own driver stands at a share of the pitch over which one pin carries.
    private double Carries(double share)
    {
        var x = law.Middle + (share - 0.5) * law.DriverPitch;
        return Pair is SwappedPins ? -law.Pair.Driven(Jet.Constant(x)).Value : x;
    }
}
