using System.Globalization;
using CsCheck;
using Jackwork.Bench.Elements.SideView;
using Jackwork.Bench.Sessions;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>The skeleton of the side view against what follows from the design by hand, and the points that it lets the maker move.</summary>
public sealed class SkeletonTests
{
    private static readonly Gen<Point3> Places = Gen.Double[-200, 200].Array[3].Select(c => new Point3(c[0], c[1], c[2]));

    public static TheoryData<string> Examples => [.. ExampleFiles.Names];

    [Fact]
    [Trait("Proof", "closed form")]
    public void ARodIsAsLongAsItsPinsAreApartAndAnArmAsItsPinIsFromItsAxis()
    {
        var (work, skeleton) = Of("keeper");
        var arm = work.Machine.IndexOf("bell-arm");

        // Pins [37, 131, 22] and [27.83, 232.81, 4]; the lever's axis along x at y 130, z -40, the arm's along z at x 14, y 235.
        Expect("rod from bell-lever to bell-arm", Math.Sqrt((9.17 * 9.17) + (101.81 * 101.81) + (18 * 18)));
        Expect("bell-lever, axis to pin", Math.Sqrt((1 * 1) + (62 * 62)));
        Expect("bell-arm, axis to pin", Math.Sqrt((13.83 * 13.83) + (2.19 * 2.19)));

        void Expect(string what, double mm)
        {
            var length = Assert.Single(skeleton.Lengths, l => l.Owner == arm && l.What == what);
            Assert.Equal(mm, length.Mm, 9);
            Assert.Equal(mm, length.From.Drawn.DistanceTo(length.To.Drawn), 9);
        }
    }

    /// <summary>A point on a level lever with its axis along -x: turned by q, y' = y0 + dy cos q + dz sin q, z' = z0 + dz cos q - dy sin q.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(97)]
    [InlineData(560)]
    [InlineData(2000)]
    [Trait("Proof", "closed form")]
    public void APinStandsWhereItsLeverHasTurnedIt(double crankDeg)
    {
        var (work, skeleton) = Of("keeper");
        var lever = work.Machine.IndexOf("hatch-lever");
        var pin = Assert.Single(skeleton.Handles, h => h.Path == "members.hatch.rod.pins.1");
        Assert.Equal(lever, pin.At.Body);
        var step = (int)Math.Round(crankDeg * Math.PI / 180 / work.Machine.Performance.Step);
        var q = work.Proof.Motion.Of(lever)[step].Value;
        var frame = new BodyFrames(work.Proof.Motion).At(new(lever), step);
        var seen = ViewPlane.All[0].Place(frame.Apply(pin.At.Drawn));

        // The axis at y 130, z -40, the pin at y 131, z 4; seen from the right, z runs to the left.
        Assert.Equal(130 + (1 * Math.Cos(q)) + (44 * Math.Sin(q)), seen.Y, 9);
        Assert.Equal(-(-40 + (44 * Math.Cos(q)) - (1 * Math.Sin(q))), seen.X, 9);
    }

    /// <summary>A roller that rests on its cam: its middle stands its radius away from the outline, at every angle. The outline is flattened to 0.1 mm and cut within 0.01.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    [Trait("Proof", "property")]
    public void EveryRollerTouchesItsCam(string name)
    {
        const double flattened = 0.12;
        var (work, skeleton) = Of(name);
        var frames = new BodyFrames(work.Proof.Motion);
        var rollers = skeleton.Strokes.Where(s => s is { Kind: StrokeKind.Roller, Closed: true }).ToList();
        Assert.Equal(work.Proof.Cams.Any(c => ((CamDrive)work.Machine.Drives[c.FollowerMember]).Spec.Follower.Roller is not null), rollers.Count > 0);
        foreach (var roller in rollers)
        {
            var cam = Assert.Single(skeleton.Strokes, s => s.Kind == StrokeKind.Cam && s.Owner == roller.Owner);
            for (var k = 0; k < 12; k++)
            {
                var place = k * frames.Steps / 12;
                if (work.Proof.Cams.Single(c => c.FollowerMember == roller.Member).DropsAt(work.Machine.Performance.At(place)))
                {
                    continue;
                }

                var (shaft, lever) = (frames.At(new(cam.Member), place), frames.At(new(roller.Member), place));
                var rim = roller.Points.Select(p => lever.Apply(p.Drawn)).ToList();
                var middle = default(Point3) + (1.0 / rim.Count) * rim.Aggregate(default(Vec3), (s, p) => s + (p - default(Point3)));
                var outline = cam.Points.Select(p => shaft.Apply(p.Drawn)).ToList();
                var nearest = Enumerable.Range(0, outline.Count).Min(i => Distance(middle, outline[i], outline[(i + 1) % outline.Count]));
                Assert.InRange(nearest - middle.DistanceTo(rim[0]), -flattened, flattened);
            }
        }
    }

    /// <summary>The pitch circles of two wheels roll on each other: their radii are as their teeth and add up to the distance of the shafts (ISO 21771-1, working pitch cylinders; from memory).</summary>
    [Fact]
    [Trait("Proof", "closed form")]
    public void PitchCirclesTouch()
    {
        var (work, skeleton) = Of("keeper");
        var wheels = skeleton.Strokes.Where(s => s.Kind == StrokeKind.Wheel && s.Owner == work.Machine.IndexOf("main")).ToList();
        Assert.Equal(2, wheels.Count);
        var radii = wheels.ConvertAll(w => 0.5 * w.Points[0].Drawn.DistanceTo(w.Points[w.Points.Length / 2].Drawn));

        // Handle at y 64, z 48, main shaft at y 100, z 0: 60 mm apart; 12 and 36 teeth.
        Assert.Equal(15, radii[0], 9);
        Assert.Equal(45, radii[1], 9);
    }

    /// <summary>Every point of every drive of the format can be moved, but for the bends of a wire, of which there are as many as the maker likes.</summary>
    [Fact]
    [Trait("Proof", "property")]
    public void EveryPointOfADriveIsAPlace()
    {
        List<string> without = [];
        void Look(Type part, string path)
        {
            foreach (var key in KeyInfo.Of(part))
            {
                var at = $"{path}.{key.Name}";
                if (key.Type == typeof(Point3) || key.Type == typeof(IReadOnlyList<Point3>))
                {
                    without.AddRange(key.Key.Place.Length == 0 ? [at] : (string[])[]);
                }
                else if (key.Type is { IsClass: true } && key.Type != typeof(string) && key.Type.Namespace == typeof(KeyInfo).Namespace)
                {
                    Look(key.Type, at);
                }
            }
        }

        foreach (var drive in Jackwork.Motion.Drives.DriveKind.All)
        {
            Look(KeyInfo.Of(typeof(MemberSpec)).Single(k => k.Name == drive.Key).Type, drive.Key);
        }

        Assert.Equal(["rod.bends"], without);
    }

    [Theory]
    [Trait("Proof", "property")]
    [InlineData("sawyers", "cam.second.follower.at", "cam.follower.at")]
    [InlineData("weaver", "barrel.at", "barrel.at")]
    [InlineData("stargazer", "ratchet.pawl")]
    [InlineData("trotting-dog", "coupler.point", "rod.pins.1")]
    [InlineData("roundabout", "pin-wheel.at", "pin-wheel.at")]
    public void PlacesOfEveryKindOfDriveAreHandles(string example, params string[] paths)
    {
        var (work, skeleton) = Of(example);
        Assert.All(paths, p => Assert.Contains(skeleton.Handles, h => h.Path.EndsWith("." + p, StringComparison.Ordinal)));
        Assert.Equal(skeleton.Handles.Length, skeleton.Handles.Select(h => h.Path).Distinct().Count());
        Assert.Equal(skeleton.Handles.Length, skeleton.Handles.Select(h => h.Label).Distinct().Count());
    }

    /// <summary>Each point's path leads, in the text as an independent reader sees it, to its own three numbers.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    [Trait("Proof", "independent")]
    public void EveryPathLeadsToItsNumbers(string name)
    {
        var root = PlainYaml.Read(ExampleFiles.Text(name));
        var (work, skeleton) = Of(name);
        Assert.True(skeleton.Handles.Length >= work.Machine.Members.Count(m => m.Joint.Turns));
        foreach (var h in skeleton.Handles)
        {
            double[] at = [h.At.Drawn.X, h.At.Drawn.Y, h.At.Drawn.Z];
            for (var i = 0; i < 3; i++)
            {
                var word = PlainYaml.At(root, FormattableString.Invariant($"{h.Path}.{i + 1}"))?.GetValue<string>();
                Assert.Equal(at[i], double.Parse(word!.AsSpan(1), CultureInfo.InvariantCulture));
            }
        }
    }

    [Theory]
    [InlineData("x", 0, 5, -3)]
    [InlineData("y", 3, 0, -5)]
    [InlineData("z", 3, 5, 0)]
    [Trait("Proof", "closed form")]
    public void ADragMovesTheTwoCoordinatesThatTheViewShows(string along, double x, double y, double z)
    {
        var view = ViewPlane.All.Single(v => v.Along == along);
        Assert.Equal(new(x, y, z), view.Way(new(1, 2, 3), 3, 5, 0));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void AWayIsSeenAsItWasAskedForAndKeepsItsDepth() => Gen.Select(Places, Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Int[0, 2]).Sample((p, right, up, along) =>
    {
        var view = ViewPlane.All[along];
        var to = p + view.Way(p, right, up, 0);
        return Math.Abs(view.Place(to).X - view.Place(p).X - right) < 1e-9 && Math.Abs(view.Place(to).Y - view.Place(p).Y - up) < 1e-9 && Math.Abs(view.Depth(to) - view.Depth(p)) < 1e-9;
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void WhatMovesComesToWholeStepsAndWhatHardlyMovesStays()
    {
        // Seen along x: 27.83 + 3.3 = 31.13, to the nearest half 31; z moves by less than half a step and stays at 4.2.
        var way = ViewPlane.All[0].Way(new(10, 27.83, 4.2), 0.2, 3.3, 0.5);
        Assert.Equal((0, 3.17, 0), (way.X, Math.Round(way.Y, 9), way.Z));

        // By whole fives: y 27.83 + 3.3 = 31.13 to 30; z 4.2 - 8 = -3.8 to -5.
        way = ViewPlane.All[0].Way(new(10, 27.83, 4.2), 8, 3.3, 5);
        Assert.Equal((2.17, -9.2), (Math.Round(way.Y, 9), Math.Round(way.Z, 9)));
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void MovingAPivotWritesItsOwnNumbersOrThoseOfWhatItCarriesToo()
    {
        var text = ExampleFiles.Text("nodding-bird");
        var (work, skeleton) = Of("nodding-bird");
        var pivot = Assert.Single(skeleton.Handles, h => h.Path == "members.lever.pivot.through");
        var alone = text.Replace("{through: [0, 70, -38], along: -x}", "{through: [0, 72.5, -39], along: -x}", StringComparison.Ordinal);
        Assert.Equal((alone, null), new Held("a", pivot, []).Move(text, new(0, 2.5, -1)));
        var all = alone
            .Replace("at: [-7, 68, 0]", "at: [-7, 70.5, -1]", StringComparison.Ordinal)
            .Replace("pins: [[0, 71, -4],", "pins: [[0, 73.5, -5],", StringComparison.Ordinal);
        Assert.Equal((all, null), new Held("b", pivot, skeleton.CarriedBy(pivot, work.Machine)).Move(text, new(0, 2.5, -1)));
    }

    /// <summary>In the keeper four levers stand on one axle at y 130, z -40, and two on one at y 105, z -60.</summary>
    [Theory]
    [InlineData("bell-lever", "scope-lever", "hatch-lever", "gull-lever")]
    [InlineData("head-lever", "eye-lever")]
    [InlineData("main")]
    [InlineData("eye-left")]
    [Trait("Proof", "closed form")]
    public void OneAxleHoldsWhatTurnsOnTheSameLine(string name, params string[] others)
    {
        var (work, skeleton) = Of("keeper");
        var pivot = skeleton.Handles.Single(h => h.Path == $"members.{name}.pivot.through");
        Assert.Equal(others, skeleton.OnAxleOf(pivot, work.Machine).Select(h => work.Machine.NameOf(h.Owner)));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void APointBroughtBackLeavesTheTextAsItWas()
    {
        var text = ExampleFiles.Text("keeper");
        var (_, skeleton) = Of("keeper");
        foreach (var handle in skeleton.Handles)
        {
            var held = new Held("there and back", handle, []);
            var (moved, refusal) = held.Move(text, new(0.5, -1, 2));
            Assert.Null(refusal);
            Assert.NotEqual(text, moved);
            Assert.Equal((text, null), held.Move(moved, default));
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void ASlabHoldsWhatTouchesIt()
    {
        var (_, skeleton) = Of("keeper");

        // The levers stand from x -80 to 37; the right board's side of the case has the wheels of the handle at 78 and the lamp's at 61.
        var slab = skeleton.Between(ViewPlane.All[0], 60, 100);
        Assert.Contains(slab.Strokes, s => s.Kind == StrokeKind.Wheel);
        Assert.DoesNotContain(slab.Strokes, s => s.Kind is StrokeKind.Lever or StrokeKind.Rod or StrokeKind.Cam);
        Assert.Equal(["members.handle.pivot.through", "members.main.pivot.through", "members.lamp-shaft.pivot.through"], slab.Handles.Where(h => h.Holds is not null).Select(h => h.Path));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheChainRunsFromTheCrankToTheFigureAndTheViewAlongMostShafts()
    {
        var (work, _) = Of("keeper");
        var machine = work.Machine;
        Assert.Equal(["gull", "gull-crank", "gull-lever", "handle", "main"], ChainOf.Members(machine, machine.IndexOf("gull-lever")).Select(machine.NameOf).Order());
        Assert.Equal(["handle", "main"], ChainOf.Members(machine, machine.IndexOf("main")).Select(machine.NameOf).Order());
        Assert.Equal("x", ViewPlane.Of(machine).Along);
    }

    private static (Work Work, Skeleton Skeleton) Of(string name)
    {
        var folder = System.IO.Path.GetDirectoryName(ExampleFiles.PathOf(name))!;
        var (work, problems) = Work.Of(1, ExampleFiles.Text(name), f => File.Exists(System.IO.Path.Combine(folder, f)) ? File.ReadAllBytes(System.IO.Path.Combine(folder, f)) : null);
        Assert.Empty(problems);
        return (work!, Skeleton.Of(work!.Proof.Motion, work.Proof.Cams, work.Proof.Mechanisms, work.Proof.Gears));
    }

    private static double Distance(Point3 p, Point3 a, Point3 b)
    {
        var d = b - a;
        var t = Math.Clamp((p - a).Dot(d) / d.Dot(d), 0, 1);
        return p.DistanceTo(a + t * d);
    }
}
