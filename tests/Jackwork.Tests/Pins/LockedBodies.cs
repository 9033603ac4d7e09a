using System.Globalization;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Pins;
using Jackwork.Tests.Examples;
using Xunit;

namespace Jackwork.Tests.Pins;

/// <summary>A driver and a driven that it turns on and locks, turned as <see cref="TurnedBodies"/> and held against the law through pick-up, drive, let-go and lock.</summary>
internal sealed record LockedBodies(IntermittentLaw Law, ParallelLock Lock, double Distance, double DrivenRadius)
{
    /// <summary>Centres of the driver's pins and of the driven's, where they have pins.</summary>
    public (IReadOnlyList<Point2> Driver, IReadOnlyList<Point2> Driven, double Diameter) Pins { get; init; } = ([], [], 1);

    /// <summary>The driver's teeth in convex slices and the driven's outline, where they have teeth.</summary>
    public (IEnumerable<Point2[]> Driver, IEnumerable<Point2> Driven) Teeth { get; init; } = ([], []);

    /// <summary>How far two bodies sink into each other before the engine parts them, and the flats of the outlines, mm.</summary>
    public required double Sinking { get; init; }

    /// <summary>How close to let-go the driven may be anywhere in its play, rad.</summary>
    public required double NearLetGo { get; init; }

    /// <summary>Turns the driver twice and holds the driven's angle against the law.</summary>
    public void GoWhereTheLawSays()
    {
        var rows = new TurnedBodies
        {
            Distance = Distance,
            Begin = (-0.5, Math.PI),
            Rim = (Lock.Rim, 0, Math.Tau - Law.Drives),
            Locks = [Lock.Driven.Flatten(0.005)],
            Drag = (DrivenRadius * DrivenRadius, 300),
            Step = 0.0005,
            Pins = Pins,
            Slices = Teeth.Driver,
            Loops = Teeth.Driven.Any() ? [Teeth.Driven] : [],
        }.Turn();
        var (driving, standing) = (0, 0);
        foreach (var (driver, driven) in rows)
        {
            var due = Law.Driven(Jet.Variable(driver));
            var (turned, rel) = (Math.PI - driven, driver - Math.Tau * Math.Floor(driver / Math.Tau));

            // Driven, it is where contact puts it or sinks in; standing, anywhere in its play; by pick-up and let-go both, since the play is taken up there.
            var near = rel < 0.1 || Math.Abs(rel - Law.Drives) < NearLetGo || rel > Math.Tau - 0.1;
            var sinks = 2 * Sinking / DrivenRadius;
            var slack = rel > Law.Drives ? Lock.Play + sinks : near ? Lock.Play + 2 * sinks : sinks;
            Assert.True(
                Math.Abs(turned - due.Value) <= slack,
                string.Create(CultureInfo.InvariantCulture, $"driver {driver * 180 / Math.PI:0.##} deg: driven {turned * 180 / Math.PI:0.###}, expected {due.Value * 180 / Math.PI:0.###} within {slack * 180 / Math.PI:0.###}"));
            _ = due.First == 0 ? standing++ : driving++;
        }

        Assert.True(driving > 100 && standing > 100);
        Assert.Equal(2 * Law.Step, Math.PI - rows[^1].Driven, Lock.Play + 0.01);
    }
}
