using Jackwork.Gears;
using Xunit;

namespace Jackwork.Tests.Gears;

/// <summary>Handbook tables and worked examples.</summary>
[Trait("Proof", "published")]
public sealed class PublishedGearTests
{
    private const double Degree = Math.PI / 180;

    private static BasicRack Full(double alphaDegrees, double addendum = 1) => new(alphaDegrees * Degree, addendum, addendum + 0.25, 0);

    [Theory] // ISO 21771 definition; the figures for 20, 25 and 30 degrees are those of the usual handbook tables.
    [InlineData(14.5, 0.00554484)]
    [InlineData(15, 0.00614980)]
    [InlineData(17.5, 0.00986617)]
    [InlineData(20, 0.01490438)]
    [InlineData(22.5, 0.02151448)]
    [InlineData(25, 0.02997535)]
    [InlineData(26.0886, 0.03431628)]
    [InlineData(30, 0.05375149)]
    public void Involute_function(double degrees, double inv)
    {
        Assert.Equal(inv, Involute.Inv(degrees * Degree), 6e-9);
        Assert.Equal(degrees, Involute.Inverse(inv) / Degree, 2e-5);
    }

    [Fact] // ISO 53:1998, table of profiles A to D, from memory.
    public void Basic_racks()
    {
        Assert.All([BasicRack.A, BasicRack.B, BasicRack.C, BasicRack.D], r =>
        {
            Assert.Equal(20, r.PressureAngle / Degree, 1e-12);
            Assert.Equal(1, r.Addendum);
        });
        Assert.Equal([1.25, 1.25, 1.25, 1.40], [BasicRack.A.Dedendum, BasicRack.B.Dedendum, BasicRack.C.Dedendum, BasicRack.D.Dedendum]);
        Assert.Equal([0.38, 0.30, 0.25, 0.39], [BasicRack.A.FilletRadius, BasicRack.B.FilletRadius, BasicRack.C.FilletRadius, BasicRack.D.FilletRadius]);
        // With profile A the flank is straight down to the addendum depth (ISO 53: the largest such fillet is c/(1 - sin(alpha)) = 0.38).
        Assert.Equal(1, BasicRack.A.StraightDepth, 5e-5);
    }

    [Theory] // Undercut by a rack, 2 ha/sin(alpha)^2: Shigley's Mechanical Engineering Design, section 13-7, from memory.
    [InlineData(20, 17.0973)]
    [InlineData(25, 11.1978)]
    [InlineData(14.5, 31.9029)]
    public void Least_teeth_against_a_rack(double degrees, double teeth)
    {
        Assert.Equal(teeth, ToothLimits.LeastPinionTeeth(degrees * Degree, double.PositiveInfinity), 5e-5);
        // A rack of full depth without rounding below the addendum line undercuts at the same number.
        Assert.Equal(teeth, ToothLimits.LeastTeeth(new(degrees * Degree, 1, 1, 0)), 5e-5);
    }

    [Theory] // x >= 1 - z sin(20)^2/2: "Elements of Metric Gear Technology", profile shift against undercut, from memory.
    [InlineData(12, 0.298133)]
    [InlineData(10, 0.415111)]
    [InlineData(8, 0.532089)]
    public void Least_shift(int teeth, double shift)
    {
        Assert.Equal(shift, ToothLimits.LeastShift(teeth, new(20 * Degree, 1, 1, 0)), 5e-7);
        // Profile A's flank is straight to 0.99997 of the addendum.
        Assert.Equal(shift, new SpurGear(3, teeth).UndercutShift, 5e-5);
        Assert.True(new SpurGear(3, teeth, shift - 1e-3).IsUndercut);
        Assert.False(new SpurGear(3, teeth, shift + 1e-3).IsUndercut);
    }

    [Theory] // Bevan, The Theory of Machines, Ex. 10.4 (13, 15, 18); Shigley, section 13-7 (16 for ratio 4), from memory.
    [InlineData(1, 12.3231, 13)]
    [InlineData(3, 14.9809, 15)]
    [InlineData(4, 15.4436, 16)]
    [InlineData(double.PositiveInfinity, 17.0973, 18)]
    public void Least_pinion(double ratio, double exact, int published)
    {
        var z = ToothLimits.LeastPinionTeeth(20 * Degree, ratio);
        Assert.Equal(exact, z, 5e-5);
        Assert.Equal(published, (int)Math.Ceiling(z));
        if (double.IsFinite(ratio))
        {
            // The same by the line of action: the wheel's tip reaches the pinion's base tangent point at that (fractional) number.
            var (c, r1) = (Math.Cos(20 * Degree), 0.5 * z);
            var line = new LineOfAction(r1 * c, ratio * r1 * c, r1 * (1 + ratio));
            Assert.Equal(0, line.AtRadius2(ratio * r1 + 1), 1e-9);
        }
    }

    [Fact] // Shigley, section 13-7, from memory: a 13-tooth pinion takes a wheel of at most 16.
    public void Largest_wheel() => Assert.Equal(16.4507, ToothLimits.LargestWheel(20 * Degree, 13), 5e-5);

    [Fact] // "Elements of Metric Gear Technology", table of standard spur gears, from memory.
    public void Standard_pair()
    {
        var (g1, g2) = (new SpurGear(3, 12), new SpurGear(3, 24));
        var pair = new SpurPair(g1, g2);
        Assert.Equal(54, pair.CentreDistance, 1e-9);
        Assert.Equal([36, 72], new[] { 2 * g1.ReferenceRadius, 2 * g2.ReferenceRadius }, Within(1e-9));
        Assert.Equal([33.8289, 67.6579], new[] { 2 * g1.BaseRadius, 2 * g2.BaseRadius }, Within(5e-5));
        Assert.Equal([42, 78], new[] { 2 * g1.TipRadius, 2 * g2.TipRadius }, Within(1e-9));
        Assert.Equal([28.5, 64.5], new[] { 2 * g1.RootRadius, 2 * g2.RootRadius }, Within(1e-9));
        Assert.Equal(6.75, g1.TipRadius - g1.RootRadius, 1e-9);
        // The handbook's contact ratio goes by the tips; 12 teeth are undercut, and the usable one is lower.
        Assert.Equal(1.511122, pair.ContactRatioByTips, 5e-7);
        Assert.True(pair.ContactRatio < pair.ContactRatioByTips);
        Assert.Contains(pair.Findings, f => f.Fault == MeshFault.UndercutShortensContact && f.Gear == 1);
    }

    [Fact] // "Elements of Metric Gear Technology", table of profile-shifted spur gears, from memory.
    public void Shifted_pair()
    {
        var pair = new SpurPair(new(3, 12, 0.6), new(3, 24, 0.36));
        Assert.Equal(0.034316, Involute.Inv(pair.WorkingPressureAngle), 5e-7);
        Assert.Equal(26.0886, pair.WorkingPressureAngle / Degree, 5e-5);
        Assert.Equal(0.83329, (pair.CentreDistance - 54) / 3, 5e-6);
        Assert.Equal(56.4999, pair.CentreDistance, 5e-5);
        Assert.Equal(37.667, 2 * pair.WorkingRadius1, 5e-4);
        Assert.Equal(75.333, 2 * pair.WorkingRadius2, 5e-4);
        // The table shortens both tips to keep the rack's clearance.
        var k = pair.ClearanceShortening;
        var (g1, g2) = (new SpurGear(3, 12, 0.6, tipShortening: k), new SpurGear(3, 24, 0.36, tipShortening: k));
        Assert.Equal(4.420, g1.TipRadius - g1.ReferenceRadius, 5e-4);
        Assert.Equal(3.700, g2.TipRadius - g2.ReferenceRadius, 5e-4);
        Assert.Equal(6.370, g1.TipRadius - g1.RootRadius, 5e-4);
        Assert.Equal(44.840, 2 * g1.TipRadius, 5e-4);
        Assert.Equal(79.400, 2 * g2.TipRadius, 5e-4);
        Assert.Equal(32.1, 2 * g1.RootRadius, 1e-9);
        Assert.Equal(66.66, 2 * g2.RootRadius, 1e-9);
        var short_ = new SpurPair(g1, g2);
        Assert.Equal(1.202102, short_.ContactRatio, 5e-7);
        Assert.Equal(0.75, short_.TipClearance1, 1e-9);
        Assert.Equal(0.75, short_.TipClearance2, 1e-9);
        Assert.Equal(0, short_.Backlash, 1e-12);
        Assert.Empty(short_.Findings);
    }

    [Fact] // a public table in the layout of "Elements of Metric Gear Technology": the same pair from a = 56.5 mm.
    public void Shift_from_centre_distance()
    {
        var sum = SpurPair.ShiftSum(3, 36, 20 * Degree, 56.5);
        Assert.Equal(0.960056, sum, 5e-7);
        var pair = new SpurPair(new(3, 12, 0.6), new(3, 24, sum - 0.6));
        Assert.Equal(56.5, pair.CentreDistance, 1e-9);
        Assert.Equal(0.034317, Involute.Inv(pair.WorkingPressureAngle), 5e-7);
        Assert.Equal(26.0888, pair.WorkingPressureAngle / Degree, 5e-5);
        var k = pair.ClearanceShortening;
        var made = new SpurPair(new(3, 12, 0.6, tipShortening: k), new(3, 24, sum - 0.6, tipShortening: k));
        Assert.Equal(1.202, made.ContactRatio, 5e-4);
    }

    [Fact] // "Elements of Metric Gear Technology", table 10-1 (chordal thickness).
    public void Chordal_thickness()
    {
        var gear = new SpurGear(10, 12, 0.3);
        var chord = ToothMeasure.Chord(gear);
        Assert.Equal(17.8918, gear.ReferenceThickness, 5e-5);
        Assert.Equal(8.54270, 0.5 * gear.ReferenceThickness / gear.ReferenceRadius / Degree, 5e-6);
        Assert.Equal(17.8256, chord.Thickness, 5e-5);
        Assert.Equal(13.6657, chord.Height, 5e-5);
    }

    [Fact] // "Elements of Metric Gear Technology", span measurement table, from memory.
    public void Span()
    {
        var gear = new SpurGear(3, 24, 0.4);
        Assert.Equal(3.78787, ToothMeasure.BestSpanTeeth(gear), 5e-6);
        var span = ToothMeasure.BestSpan(gear);
        Assert.Equal(4, span.Teeth);
        Assert.Equal(32.8266, span.Length, 5e-5);
        Assert.True(span.OnFlank);
    }

    [Theory] // Span factors W/m for x = 0, 20 degrees, as in the handbooks (DIN 3960 tables), from memory.
    [InlineData(12, 2, 4.596264)]
    [InlineData(20, 3, 7.660439)]
    [InlineData(30, 4, 10.752626)]
    [InlineData(40, 5, 13.844813)]
    [InlineData(50, 6, 16.937000)]
    public void Span_factors(int teeth, int over, double length)
    {
        Assert.Equal(length, ToothMeasure.Span(new(1, teeth), over).Length, 5e-7);
        Assert.Equal(over, ToothMeasure.BestSpan(new(1, teeth)).Teeth);
    }

    [Fact] // "Elements of Metric Gear Technology", over-pin table, from memory.
    public void Over_pins()
    {
        var gear = new SpurGear(1, 20);
        Assert.Equal(22.2941, ToothMeasure.OverPins(gear, 1.7).Length, 5e-5);
        // Printed from rounded angles; recomputed to 1.724449.
        Assert.Equal(1.7245, ToothMeasure.IdealPin(gear), 1e-4);
        Assert.Equal(1.724449, ToothMeasure.IdealPin(gear), 5e-7);
        Assert.True(ToothMeasure.OverPins(gear, 1.7).OnFlank);
    }

    // Path of contact by tip circles, as in the worked examples; addenda in mm.
    private static (double Approach, double Recess, double Arc, double Ratio) Path(
        double module, int z1, int z2, double alphaDegrees, double ha1, double ha2, bool inside = false)
    {
        var (c, r1, r2) = (Math.Cos(alphaDegrees * Degree), 0.5 * module * z1, 0.5 * module * z2);
        var line = new LineOfAction(r1 * c, r2 * c, inside ? r2 - r1 : r2 + r1, inside);
        var approach = line.PitchPoint - line.AtRadius2(inside ? r2 - ha2 : r2 + ha2);
        var recess = line.AtRadius1(r1 + ha1) - line.PitchPoint;
        return (approach, recess, (approach + recess) / c, (approach + recess) / (Math.PI * module * c));
    }

    [Fact] // Khurmi and Gupta, Theory of Machines, Ex. 12.3.
    public void Path_and_arc_of_contact()
    {
        var p = Path(12, 30, 80, 20, 10, 10);
        Assert.Equal(52.3, p.Approach + p.Recess, 0.05);
        Assert.Equal(55.61, p.Arc, 0.005);
        Assert.Equal(1.5, p.Ratio, 0.05);
        var rack = Full(20, 10.0 / 12);
        var pair = new SpurPair(new(12, 30, 0, rack), new(12, 80, 0, rack));
        Assert.Equal(52.258239, pair.Approach + pair.Recess, 5e-7);
        Assert.Equal(1.475156, pair.ContactRatio, 5e-7);
    }

    [Fact] // Khurmi and Gupta, Ex. 12.5: pinion 20 teeth at 2000 rpm, wheel 40.
    public void Sliding_and_turn_of_the_pinion()
    {
        var pair = new SpurPair(new(5, 40), new(5, 20));
        // The wheel's tip enters at the pinion's root: approach of the pinion driving is the recess of the wheel driving.
        var omega = 2000 * 2 * Math.PI / 60;
        Assert.Equal(3610, pair.Approach * omega * 1.5, 0.5);
        Assert.Equal(3973, pair.Recess * omega * 1.5, 0.5);
        Assert.Equal(29.43, (pair.Approach + pair.Recess) / pair.Second.BaseRadius / Degree, 0.005);
        Assert.Equal(3972.9967, pair.Line.SlidingAt(pair.Line.PitchPoint + pair.Recess) * omega / 2, 5e-4);
    }

    [Fact] // Khurmi and Gupta, Ex. 12.7: pinion in a ring. Its pinion is pointed, so only the line of action is tested.
    public void Path_in_a_ring()
    {
        var p = Path(4, 18, 72, 20, 8.5, 3.5, inside: true);
        Assert.Equal(11.436866, p.Approach, 5e-7);
        Assert.Equal(16.598401, p.Recess, 5e-7);
        Assert.Equal(28.04, p.Approach + p.Recess, 0.005);
    }

    [Theory] // Khurmi and Gupta, Ex. 12.8; Sarkar, Theory of Machines, Illustr. 4.3: approach and recess each half of the greatest.
    [InlineData(10, 20, 40, 16.229658, 6.475180, 16.2, 6.5, 54.6)]
    [InlineData(6, 24, 48, 11.685354, 4.662130, 11.7, 4.7, 39.3)]
    public void Half_of_the_greatest_path(double m, int z1, int z2, double ha1, double ha2, double printed1, double printed2, double arc)
    {
        var (s, c, r1, r2) = (Math.Sin(20 * Degree), Math.Cos(20 * Degree), 0.5 * m * z1, 0.5 * m * z2);
        var line = new LineOfAction(r1 * c, r2 * c, r1 + r2);
        var wheel = line.Radius2At(line.PitchPoint - 0.5 * r1 * s) - r2;
        var pinion = line.Radius1At(line.PitchPoint + 0.5 * r2 * s) - r1;
        Assert.Equal(ha1, pinion, 1e-6);
        Assert.Equal(ha2, wheel, 1e-6);
        Assert.Equal(printed1, pinion, 0.05);
        Assert.Equal(printed2, wheel, 0.05);
        Assert.Equal(arc, Path(m, z1, z2, 20, pinion, wheel).Arc, 0.05);
    }

    [Fact] // Sarkar, Illustr. 4.2, and Khurmi and Gupta, Ex. 12.2: 40/40, m = 6, arc 1.75 pitches.
    public void Addendum_for_an_arc() => Assert.Equal(1.75, Path(6, 40, 40, 20, 6.144428, 6.144428).Ratio, 1e-6);

    [Fact] // Bevan, Ex. 10.5: 25 equal teeth, arc 1.6 pitches, addendum 0.32 of the circular pitch.
    public void Addendum_in_pitches()
    {
        Assert.Equal(1.6, Path(1, 25, 25, 20, 0.991531, 0.991531).Ratio, 1e-5);
        Assert.Equal(0.32, 0.991531 / Math.PI, 0.005);
    }

    [Theory] // Bevan, Ex. 10.6, recomputed (the transcript rounds a radius).
    [InlineData(14.5, 6.103499, 2.006723)]
    [InlineData(20, 4.980029, 1.686926)]
    public void Two_pressure_angles(double degrees, double length, double ratio)
    {
        var p = Path(1, 28, 45, degrees, 1, 1);
        Assert.Equal(length, p.Approach + p.Recess, 5e-7);
        Assert.Equal(ratio, p.Ratio, 5e-7);
    }

    [Fact] // Shigley, Ex. 13-1, from memory: 2 teeth per inch, 16/40, centres set 0.25 in wider.
    public void Wider_centres()
    {
        const double Inch = 25.4;
        var (g1, g2) = (new SpurGear(Inch / 2, 16), new SpurGear(Inch / 2, 40));
        Assert.Equal(14 * Inch, new SpurPair(g1, g2).CentreDistance, 1e-9);
        var pair = new SpurPair(g1, g2, 14.25 * Inch);
        Assert.Equal(3.758770, g1.BaseRadius / Inch, 5e-7);
        Assert.Equal(9.396926, g2.BaseRadius / Inch, 5e-7);
        Assert.Equal(8.142857, 2 * pair.WorkingRadius1 / Inch, 5e-7);
        Assert.Equal(20.357143, 2 * pair.WorkingRadius2 / Inch, 5e-7);
        Assert.Equal(22.56, pair.WorkingPressureAngle / Degree, 0.05);
        Assert.Equal(22.600512, pair.WorkingPressureAngle / Degree, 5e-7);
    }

    [Fact] // Sarkar, Illustr. 4.1.
    public void Arc_of_contact()
    {
        var pair = new SpurPair(new(5, 48), new(5, 30));
        Assert.Equal(26.7, (pair.Approach + pair.Recess) / Math.Cos(20 * Degree), 0.05);
        Assert.Equal(1.700511, pair.ContactRatio, 5e-7);
    }

    [Fact] // Bevan, Ex. 10.1 and 10.3: circular pitch and diameter.
    public void Circular_pitch()
    {
        Assert.Equal(11.459, 2 * new SpurGear(0.75 / Math.PI, 48).ReferenceRadius, 5e-4);
        var gear = new SpurGear(6, 48);
        Assert.Equal(288, 2 * gear.ReferenceRadius, 1e-9);
        Assert.Equal(0.7421, gear.Pitch * gear.ReferenceRadius / 25.4, 5e-5);
    }

    [Theory] // j = 2 a' (inv aw - inv a), j_n = 2 a cos(a)(inv aw - inv a): from the thickness relations of ISO 21771; and the rule of thumb 2 da tan(a).
    [InlineData(3, 12, 24, 0.1, 0.073435, 0.072794, 0.068879)]
    [InlineData(4, 10, 30, 0.2, 0.147317, 0.145588, 0.138088)]
    [InlineData(5, 16, 32, 0.3, 0.220976, 0.218382, 0.207132)]
    public void Backlash_of_wider_centres(double m, int z1, int z2, double wider, double backlash, double thumb, double normal)
    {
        var (g1, g2) = (new SpurGear(m, z1), new SpurGear(m, z2));
        var pair = new SpurPair(g1, g2, 0.5 * m * (z1 + z2) + wider);
        Assert.Equal(backlash, pair.Backlash, 5e-7);
        Assert.Equal(normal, pair.NormalBacklash, 5e-7);
        Assert.Equal(thumb, pair.Backlash, 0.015 * thumb);
    }

    private static Func<double, double, bool> Within(double tolerance) => (a, b) => Math.Abs(a - b) <= tolerance;
}
