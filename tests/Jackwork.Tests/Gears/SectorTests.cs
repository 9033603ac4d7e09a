using CsCheck;
using Jackwork.Gears;
using Jackwork.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Distance;
using Xunit;

namespace Jackwork.Tests.Gears;

/// <summary>Sectors of spur wheels: the plate against the whole wheel, and which teeth touch, by rolling the outlines as polygons of another library.</summary>
public sealed class SectorTests
{
    /// <summary>Flattening of arcs, mm.</summary>
    private const double Sagitta = 0.001;

    private static readonly Gen<(SpurGear Gear, int First, int Last, double Boss)> AnySector =
        Gen.Select(Gen.Int[18, 90], Gen.Double[1, 3], Gen.Double[-0.3, 0.5], Gen.Int[-20, 20], Gen.Double[0, 1], Gen.Double[0.1, 0.8]).Select((teeth, module, shift, first, share, boss) =>
        {
            var gear = new SpurGear(module, teeth, shift, thinning: 0.1);
            var radius = boss * gear.RootRadius;
            var most = GearSector.MostTeeth(gear, radius);
            return (gear, first, first + (int)(share * (most - 1)), radius);
        }).Where(s => GearSector.MostTeeth(s.Item1, s.radius) >= 1).Select(s => (s.gear, s.first, s.Item3, s.radius));

    // Nothing stands where the whole wheel has no wood, so what rolls with that rolls with the sector; and no more is cut off than the teeth beyond it.
    [Fact]
    [Trait("Proof", "independent")]
    public void ASectorIsAPartOfTheWholeWheel() => AnySector.Sample(
        s =>
        {
            var sector = GearSector.Of(s.Gear, s.First, s.Last, s.Boss);
            var (whole, plate, shell) = (Of(GearOutline.Of(s.Gear)), Of(sector.Outline()), Of(sector.Shell()));
            Assert.True(plate.IsValid && shell.IsValid && sector.Outline().SignedArea > 0 && sector.Outline().Gap < 1e-9);
            Assert.True(whole.Buffer(0.003).Covers(plate));
            Assert.True(shell.Buffer(0.003).Covers(plate));
            Assert.True(plate.Buffer(0.003).Covers(Disc(s.Boss)));

            // Within the angles of its teeth it is the whole wheel.
            var wedge = GearPolygons.Sector(1.5 * s.Gear.TipRadius, (s.First - 0.5) * s.Gear.Pitch, (s.Last + 0.5) * s.Gear.Pitch, 80);
            Assert.Equal(whole.Intersection(wedge).Area, plate.Intersection(wedge).Area, 0.002 * whole.Area / s.Gear.RootRadius);
        },
        iter: 60);

    [Fact]
    [Trait("Proof", "independent")]
    public void WindowsLeaveRimArmsAndBoss() => Gen.Select(AnySector, Gen.Double[3, 8], Gen.Double[3, 8], Gen.Double[1, 6]).Sample(
        (s, rim, arm, cutter) =>
        {
            var sector = GearSector.Of(s.Gear, s.First, s.Last, s.Boss, (rim, arm), cutter);
            var edge = new IndexedFacetDistance(Of(sector.Outline()).ExteriorRing);
            var windows = sector.Windows.Select(w => Of(w)).ToList();
            for (var i = 0; i < windows.Count; i++)
            {
                var w = windows[i];
                Assert.True(w.IsValid && sector.Windows[i].SignedArea > 0 && sector.Windows[i].Gap < 1e-9);
                Assert.True(edge.Distance(w) > Math.Min(rim, arm) - 0.003, $"{edge.Distance(w)}");
                Assert.True(w.Distance(Disc(s.Boss)) < 2 * s.Gear.RootRadius && w.Intersection(Disc(s.Boss)).Area < 0.01 * s.Boss);
                Assert.All(windows.Skip(i + 1), v => Assert.True(v.Distance(w) > arm - 0.003));

                // The cutter gets into every corner: opening by its disc takes nothing away.
                Assert.Equal(w.Area, w.Buffer(-cutter / 2 + 0.004, 32).Buffer(cutter / 2 - 0.004, 32).Area, 0.02 * w.Length);
            }
        },
        iter: 60);

    [Fact]
    [Trait("Proof", "closed form")]
    public void ARoomySectorHasWindowsAndAWideOneArms()
    {
        var gear = new SpurGear(2, 60);
        Assert.Single(GearSector.Of(gear, 0, 7, 9, (8, 8), 3).Windows);
        Assert.Equal(3, GearSector.Of(gear, 0, 24, 9, (8, 8), 3).Windows.Length); // 26 pitches of 6 degrees
        Assert.Empty(GearSector.Of(gear, 0, 2, 9, (8, 16), 3).Windows);
        Assert.Throws<ArgumentException>(() => GearSector.Of(gear, 0, 60, 9));
        Assert.Throws<ArgumentException>(() => GearSector.Of(new SpurGear(2, 60, inside: true), 0, 8, 9));
    }

    private static readonly Gen<(SpurPair Pair, bool IsSecond, double ToothAt, double MateAt)> AnyContact =
        Gen.Select(Gen.Int[12, 60], Gen.Int[12, 60], Gen.Double[0.05, 0.2], Gen.Double[-0.2, 0.3], Gen.Double[0, 0.3], Gen.Bool, Gen.Double[-Math.PI, Math.PI]).Select((z1, z2, thinning, shift, apart, second, mate) =>
        {
            var (a, b) = (new SpurGear(2, z1, Math.Max(shift, z1 < 17 ? 0.4 : -1), thinning: thinning), new SpurGear(2, z2, z2 < 17 ? 0.4 : 0, thinning: thinning));
            var pair = new SpurPair(a, b);
            pair = new SpurPair(a, b, pair.NominalCentreDistance + apart);
            return (pair, second, Math.PI / 2, mate);
        }).Where(p => p.pair.ContactRatio > 1.15 && p.pair.Findings.IsEmpty);

    // Each tooth alone as a polygon, rolled with the mate pressed against it one way and the other.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheTeethThatTouchAreThoseOfTheOutlines() => Gen.Select(AnyContact, Gen.Double[-0.4, 0], Gen.Double[0.05, 0.4]).Sample(
        (c, least, most) =>
        {
            var contact = ToothContact.Of(c.Pair, c.IsSecond, c.ToothAt, c.MateAt);
            var roll = new Roll(c.Pair, c.IsSecond, c.ToothAt, c.MateAt);
            var (first, last) = contact.Touching(least - 0.3 * contact.Pitch, most + 0.3 * contact.Pitch);
            var touching = new SortedSet<int>();
            for (var q = least; q <= most; q += contact.Pitch / 12)
            {
                foreach (var press in (double[])[-1, 1])
                {
                    touching.UnionWith(Enumerable.Range(first - 2, last - first + 5).Where(k => roll.Gap(k, q, press) < 0.003));
                }
            }

            var (inner, outer) = (contact.Touching(least + 0.2 * contact.Pitch, most - 0.2 * contact.Pitch), contact.Touching(least - 0.2 * contact.Pitch, most + 0.2 * contact.Pitch));
            if (inner.Last >= inner.First && most - least > 0.5 * contact.Pitch)
            {
                Assert.InRange(touching.Min, outer.First, inner.First);
                Assert.InRange(touching.Max, inner.Last, outer.Last);
            }
        },
        iter: 12);

    // A sector turned too far: as long as no tooth is missing the mate has its backlash and no more, and a little later it has come free.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheMateComesFreeWhereTeethAreMissing() => AnyContact.Sample(
        c =>
        {
            var contact = ToothContact.Of(c.Pair, c.IsSecond, c.ToothAt, c.MateAt);
            var roll = new Roll(c.Pair, c.IsSecond, c.ToothAt, c.MateAt);
            var (first, last) = contact.Touching(-0.05, 0.05);
            var (held, free) = (0.0, 2.5 * contact.Pitch);
            Assert.Equal(0, contact.Missing(first, last, held));
            while (free - held > 1e-6)
            {
                var middle = (held + free) / 2;
                (held, free) = contact.Missing(first, last, -middle) == 0 ? (middle, free) : (held, middle);
            }

            Assert.InRange(roll.Play(first, last, -held + 0.1 * contact.Pitch), 0, roll.Backlash + 0.02);
            Assert.True(roll.Play(first, last, -held - 0.35 * contact.Pitch) > roll.Backlash + 0.04);
            Assert.Equal(1, contact.Missing(first, last, -held - 0.1 * contact.Pitch));
        },
        iter: 15);

    private static Polygon Of(Outline outline) => GearPolygons.Polygon(outline, Sagitta);

    private static Polygon Disc(double radius) => Of(Outline.Circle(Point2.Origin, radius));

    /// <summary>A wheel and its whole mate as polygons, the wheel's axis at the origin.</summary>
    private sealed class Roll(SpurPair pair, bool isSecond, double toothAt, double mateAt)
    {
        private readonly SpurGear own = isSecond ? pair.Second : pair.First;
        private readonly SpurGear other = isSecond ? pair.First : pair.Second;
        private readonly Polygon mate = Of(GearOutline.Of(isSecond ? pair.First : pair.Second));

        // Where a tooth of the mate stands as drawn, evenly in a gap: found by the symmetry of the mesh alone.
        private double MateAt => mateAt + Math.PI - (toothAt - mateAt) * own.Teeth / other.Teeth + other.Pitch / 2;

        /// <summary>Backlash as an arc at the mate's pitch circle, mm.</summary>
        public double Backlash => pair.Backlash;

        public double Gap(int tooth, double q, double press)
        {
            var one = Turned(Of(GearSector.Of(own, tooth, tooth, 0.3 * own.RootRadius).Outline()), toothAt + q);
            return new IndexedFacetDistance(one.ExteriorRing).Distance(Mate(q, press * (pair.NormalBacklash / 2 - 0.0015) / other.BaseRadius).ExteriorRing);
        }

        /// <summary>How far the mate can be turned in all, as an arc at its pitch circle, mm.</summary>
        public double Play(int first, int last, double q)
        {
            var one = Turned(Of(GearSector.Of(own, first, last, 0.3 * own.RootRadius).Outline()), toothAt + q);
            return (Free(1) + Free(-1)) * other.ReferenceRadius;

            double Free(int way)
            {
                var (clear, struck) = (0.0, 0.5 * other.Pitch);
                while (struck - clear > 1e-5)
                {
                    var middle = (clear + struck) / 2;
                    (clear, struck) = one.Intersects(Mate(q, way * middle)) ? (clear, middle) : (middle, struck);
                }

                return clear;
            }
        }

        private Polygon Mate(double q, double more)
        {
            var turned = Turned(mate, MateAt - q * own.Teeth / other.Teeth + more);
            return (Polygon)AffineTransformation.TranslationInstance(pair.CentreDistance * Math.Cos(mateAt), pair.CentreDistance * Math.Sin(mateAt)).Transform(turned);
        }

        private static Polygon Turned(Polygon p, double angle) => (Polygon)AffineTransformation.RotationInstance(angle).Transform(p);
    }
}
