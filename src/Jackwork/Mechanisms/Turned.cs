using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Parts;

namespace Jackwork.Mechanisms;

/// <summary>A turned part of a mechanism: round about the axis of the member that it sits on.</summary>
/// <param name="Name">Its name, unique in the piece.</param>
/// <param name="Member">The member whose axis it is round about and that it moves with.</param>
/// <param name="Profile">Its outside from one end to the other: mm along the member's axis from the point that that is drawn through, rising, and the radius there, mm.</param>
/// <param name="Bore">Diameter of its bore, mm.</param>
public sealed record Turned(string Name, int Member, ImmutableArray<(double Station, double Radius)> Profile, double Bore)
{
    /// <summary>Its true section above the axis where hollows make it other than the profile, x along the axis, y the radius; counter-clockwise, mm. Null where the profile is it.</summary>
    public Outline? Section { get; init; }

    /// <summary>Its hub, turned in one with it or fixed on it, at the end of the profile (above) or at its beginning; null for none.</summary>
    public PlateHub? Hub { get; init; }

    /// <summary>From where to where it reaches with its hub, mm along the member's axis.</summary>
    public (double From, double To) Reach
    {
        get
        {
            var hub = Hub is { } h ? h.Length ?? PlateParts.HubLength : 0;
            return (Profile[0].Station - (Hub?.Above == false ? hub : 0), Profile[^1].Station + (Hub?.Above == true ? hub : 0));
        }
    }

    /// <summary>What is turned or bought by.</summary>
    public SizeTable Sizes { get; init; } = new("", []);

    /// <summary>What is told of it beside its name.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether it is bought ready, and so has no drawing.</summary>
    public bool Bought { get; init; }

    /// <summary>What it is made of.</summary>
    public Material Material { get; init; } = Material.Named("brass");

    /// <summary>Volume between profile and bore, mm^3, by closed form of the slices.</summary>
    public double Volume
    {
        get
        {
            var sum = 0.0;
            foreach (var ((s, r), (t, q)) in Profile.Zip(Profile.Skip(1)))
            {
                sum += Math.PI * (t - s) * ((r * r + r * q + q * q) / 3 - Bore * Bore / 4);
            }

            return sum;
        }
    }
}
