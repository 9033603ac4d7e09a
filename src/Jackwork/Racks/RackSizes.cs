using Jackwork.Gears;
using Jackwork.Geometry;

namespace Jackwork.Racks;

/// <summary>A rack that gears with an involute pinion: its teeth, contact and outline.</summary>
/// <remarks>
/// <para>Pinion of module m, z teeth, shift x; r = m z/2, r_b = r cos(alpha), tip r_a. The rack's datum line stands r + x m from the pinion's axis; its teeth are pi m apart, pi m/2 less the
/// thinning thick on it, h_a high above and h_f deep below, flanks at alpha. A turn of the pinion moves it by pi m z.</para>
/// <para>Contact runs along the line of action from the rack's tip to the pinion's: before the pitch point  g_a = (h_a - x m)/sin(alpha),  no farther than the pinion's flank goes;
/// after it  g_r = sqrt(r_a^2 - r_b^2) - r sin(alpha).  Contact ratio (g_a + g_r)/(pi m cos(alpha)).</para>
/// <para>Teeth are cut for the travel, for the contact on either side, g cos(alpha), and one pitch more.</para>
/// <para>A cutter of radius c comes in a gap of half width w = pi m/4 + t/2 on the datum line down to where it touches both flanks, at the height
/// (c/cos(alpha) - w)/tan(alpha) - c sin(alpha), or the bottom, when it touches them at c (1 - sin(alpha)) - h_f; below the higher of these the flank is not true.</para>
/// <para>ISO 53:1998; ISO 21771:2007, clause 5; "Elements of Metric Gear Technology", section 4, rack and spur gear (all from memory).</para>
/// </remarks>
/// <param name="Pinion">The pinion, not a ring.</param>
/// <param name="Back">Wood behind the teeth, mm.</param>
/// <param name="From">Least travel of the rack, mm from where it is drawn.</param>
/// <param name="To">Greatest travel, mm.</param>
public sealed record RackSizes(SpurGear Pinion, double Back, double From, double To)
{
    /// <summary>Angle alpha, rad.</summary>
    public double PressureAngle => Pinion.Rack.PressureAngle;

    /// <summary>From tooth to tooth, mm.</summary>
    public double Pitch => Math.PI * Pinion.Module;

    /// <summary>Distance of the rack's datum line from the pinion's axis, mm.</summary>
    public double DatumDistance => Pinion.ReferenceRadius + Pinion.Shift * Pinion.Module;

    /// <summary>Height of the rack's teeth above the datum line h_a, mm.</summary>
    public double Addendum => Pinion.Rack.Addendum * Pinion.Module;

    /// <summary>Depth of its gaps below the datum line h_f, mm.</summary>
    public double Dedendum => Pinion.Rack.Dedendum * Pinion.Module;

    /// <summary>Length of contact before the pitch point, mm along the line of action.</summary>
    public double Approach
    {
        get
        {
            var (sin, rb) = (Math.Sin(PressureAngle), Pinion.BaseRadius);
            var flank = Pinion.ReferenceRadius * sin - Math.Sqrt(Math.Max(0, Pinion.FormRadius * Pinion.FormRadius - rb * rb));
            return Math.Min((Addendum - Pinion.Shift * Pinion.Module) / sin, flank);
        }
    }

    /// <summary>Length of contact after the pitch point, mm along the line of action.</summary>
    public double Recess => Math.Sqrt(Pinion.TipRadius * Pinion.TipRadius - Pinion.BaseRadius * Pinion.BaseRadius) - Pinion.ReferenceRadius * Math.Sin(PressureAngle);

    /// <summary>Contact ratio.</summary>
    public double ContactRatio => (Approach + Recess) / (Pitch * Math.Cos(PressureAngle));

    /// <summary>Room between the pinion's tip and the bottom of a gap, mm.</summary>
    public double TipClearance => DatumDistance + Dedendum - Pinion.TipRadius;

    /// <summary>Teeth of the rack.</summary>
    public int Teeth => (int)Math.Ceiling((To - From + 2 * (Math.Max(Approach, Recess) * Math.Cos(PressureAngle) + Pitch)) / Pitch);

    /// <summary>Length of the rack, mm.</summary>
    public double Length => Teeth * Pitch;

    /// <summary>Where the middle of the rack stands along its travel from the pinion's axis, as drawn, mm: a tooth's middle or a gap's.</summary>
    public double Middle
    {
        get
        {
            // A tooth stands at the axis as drawn; an odd number of teeth has a tooth in its middle, an even one a gap.
            var offset = Teeth % 2 == 0 ? 0.5 : 0;
            return Pitch * (Math.Round(-(From + To) / 2 / Pitch - offset) + offset);
        }
    }

    /// <summary>Height above the datum line from which a cutter leaves the rack's flanks true, mm.</summary>
    public double CutFrom(double cutterDiameter)
    {
        var (c, (sin, cos)) = (cutterDiameter / 2, Math.SinCos(PressureAngle));
        return Math.Max((c / cos - Pitch / 4 - Pinion.Thinning / 2) * cos / sin - c * sin, c * (1 - sin) - Dedendum);
    }

    /// <summary>Height above the datum line from which the pinion needs them true, mm; negative.</summary>
    public double NeededFrom => -(Recess * Math.Sin(PressureAngle) - Pinion.Shift * Pinion.Module);

    /// <summary>The rack's outline, counter-clockwise, mm: x along it from its middle, y towards the pinion from the middle of its back.</summary>
    public Outline Outline()
    {
        var tan = Math.Tan(PressureAngle);
        var half = Pitch / 4 - Pinion.Thinning / 2;
        var datum = Back / 2 + Dedendum;
        var points = new List<Point2> { new(-Length / 2, -Back / 2), new(Length / 2, -Back / 2) };
        for (var i = Teeth - 1; i >= 0; i--)
        {
            var x = (i - (Teeth - 1) / 2.0) * Pitch;
            points.AddRange([
                new(x + half + Dedendum * tan, datum - Dedendum), new(x + half - Addendum * tan, datum + Addendum),
                new(x - half + Addendum * tan, datum + Addendum), new(x - half - Dedendum * tan, datum - Dedendum)]);
        }

        points.Insert(2, new(Length / 2, Back / 2));
        points.Add(new(-Length / 2, Back / 2));
        return Geometry.Outline.Polygon(points);
    }
}
