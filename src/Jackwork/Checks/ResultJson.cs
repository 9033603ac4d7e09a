using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Checks;

/// <summary>The whole result as JSON, for other programs. Names are fixed: keys are added, never renamed.</summary>
public static class ResultJson
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The JSON text of a proof and its verdict. Numbers that don't exist (no hollow, no outline error) are null.</summary>
    /// <param name="proof">What was worked out.</param>
    /// <param name="verdict">What the checks say.</param>
    /// <param name="design">How the design was named on the command line.</param>
    /// <param name="checksMs">Time that the checks took, ms.</param>
    public static string Write(Proof proof, Verdict verdict, string design, double checksMs)
    {
        var machine = proof.Machine;
        var (motion, cams, asCut) = proof.Elapsed;
        var root = new JsonObject
        {
            ["format"] = 1,
            ["design"] = design,
            ["title"] = machine.Design.Title,
            ["performance"] = new JsonObject { ["crankTurns"] = machine.Performance.CrankTurns, ["steps"] = machine.Performance.Steps },
            ["closureMm"] = Number(proof.Closure),
            ["members"] = Array(machine.Members.Select((_, m) => Member(proof, m))),
            ["timing"] = Array(machine.Acted.Select((_, k) => Timing(proof, k))),
            ["cams"] = Array(proof.Cams.Select(c => Cam(proof, c))),
            ["gears"] = Array(proof.Gears.Select(g => Gear(machine, g))),
            ["parts"] = Array(proof.Assembly.Parts.Select(p => Part(machine, p))),
            ["joined"] = Array(proof.Assembly.Joined.Select(Joined)),
            ["clearance"] = Array(proof.Clearances.Select(Clearance)),
            ["stacks"] = Array(proof.Stacks.Select(s => StackJson.Of(proof, s))),
            ["findings"] = Array(verdict.Findings.Select(Finding)),
            ["elapsedMs"] = new JsonObject { ["motion"] = Round(motion), ["cams"] = Round(cams), ["asCut"] = Round(asCut), ["clearance"] = Round(proof.ClearanceMs), ["checks"] = Round(checksMs), ["total"] = Round(motion + cams + asCut + proof.ClearanceMs + checksMs) },
        };
        var after = root.IndexOf("gears");
        foreach (var list in Mechanisms.MechanismKind.All.Select(k => k.List))
        {
            root.Insert(++after, list, Array(proof.Listed(list).Select(m => m.ToJson())));
        }

        return root.ToJsonString(Options);
    }

    private static JsonObject Member(Proof proof, int m)
    {
        var member = proof.Machine.Members[m];
        var w = proof.Machine.CrankSpeed;
        var (min, max, speed, acceleration) = (double.PositiveInfinity, double.NegativeInfinity, 0.0, 0.0);
        foreach (var q in proof.Motion.Of(m))
        {
            min = Math.Min(min, q.Value);
            max = Math.Max(max, q.Value);
            speed = Math.Max(speed, Math.Abs(q.First));
            acceleration = Math.Max(acceleration, Math.Abs(q.Second));
        }

        if (proof.Machine.Turns[m] is not null)
        {
            // A shaft that goes round is told within one turn.
            (min, max) = (0, 2 * Math.PI);
        }

        var u = member.UnitSize;
        return new()
        {
            ["name"] = member.Name,
            ["unit"] = member.Unit,
            ["drive"] = proof.Machine.Drives[m].Kind,
            ["driver"] = proof.Machine.NameOf(proof.Machine.Drives[m].Driver),
            ["min"] = Number(min / u),
            ["max"] = Number(max / u),
            ["maxSpeed"] = Number(speed * w / u),
            ["maxAcceleration"] = Number(acceleration * w * w / u),
        };
    }

    private static JsonObject Timing(Proof proof, int k)
    {
        var acted = proof.Machine.Acted[k];
        var member = proof.Machine.Members[acted.Member];
        return new()
        {
            ["member"] = member.Name,
            ["over"] = proof.Machine.NameOf(acted.Shaft),
            ["maxErrorAsCut"] = Number(proof.AsCut.Results[k].MaxError / member.UnitSize),
            ["atCrankDeg"] = Number(Proof.Deg(proof.AsCut.Results[k].AtCrank)),
            ["unit"] = member.Unit,
        };
    }

    private static JsonObject Cam(Proof proof, Cams.Cam cam) => new()
    {
        ["name"] = cam.Name,
        ["on"] = cam.On,
        ["baseRadiusMm"] = Number(cam.BaseRadius),
        ["setOver"] = Number(cam.Follower.Turns ? Proof.Deg(cam.Follower.SetOver) : cam.Follower.SetOver),
        ["setOverUnit"] = cam.Follower.Turns ? "deg" : "mm",
        ["maxPressureAngleDeg"] = Number(Proof.Deg(cam.Profile.MaxPressureAngle)),
        ["minConvexRadiusMm"] = Number(cam.Profile.MinConvexRadius),
        ["minConcaveRadiusMm"] = Number(cam.Profile.MinConcaveRadius),
        ["segments"] = cam.Outline.Segments.Length,
        ["outlineErrorMm"] = Number(cam.OutlineError),
        ["unreachedMm"] = Number(cam.Unreached),
        ["asCutErrorMm"] = Number(proof.AsCutOf(cam).FollowerError),
    };

    private static JsonObject Gear(Machine machine, Gears.GearWork g) => new()
    {
        ["driver"] = machine.NameOf(g.Drive.Driver),
        ["driven"] = machine.NameOf(g.Drive.Driven),
        ["ratio"] = g.Drive.Ratio.Value,
        ["contactRatio"] = g.Pair is { } p ? Number(p.ContactRatio) : null,
        ["centreDistanceMm"] = Number(g.CentreDistance),
        ["nominalCentreDistanceMm"] = g.Pair is { } n ? Number(n.NominalCentreDistance) : null,
        ["backlashMm"] = g.Pair is { } b ? Number(b.Backlash) : null,
        ["driverSpan"] = Span(g.DriverGear),
        ["drivenSpan"] = Span(g.DrivenGear),
        ["driverSector"] = Sector(g.DriverSector),
        ["drivenSector"] = Sector(g.DrivenSector),
    };

    // What is cut of a wheel of which the design asks for a sector only; teeth is null where it is cut whole all the same.
    private static JsonObject? Sector(Gears.SectorWork? sector) => sector is null
        ? null
        : new()
        {
            ["teeth"] = sector.Sector?.Teeth,
            ["teethNeeded"] = sector.Needed,
            ["fromDeg"] = Number(Proof.Deg(sector.From)),
            ["toDeg"] = Number(Proof.Deg(sector.To)),
            ["plateDeg"] = sector.Sector is { } s ? Number(Proof.Deg(s.To - s.From)) : null,
            ["bossMm"] = Number(sector.Boss),
            ["windows"] = sector.Sector?.Windows.Length,
        };

    // Over how many teeth a wheel is best measured, and what the jaws then read.
    private static JsonObject? Span(Gears.SpurGear? gear) => gear is null || gear.Inside
        ? null
        : new() { ["teeth"] = Gears.ToothMeasure.BestSpan(gear).Teeth, ["mm"] = Number(Gears.ToothMeasure.BestSpan(gear).Length) };

    private static JsonObject Part(Machine machine, Parts.Part p) => new()
    {
        ["name"] = p.Name,
        ["kind"] = p.Kind.ToString().ToLowerInvariant(),
        ["on"] = p.Kind == Parts.PartKind.Cord ? $"cord of {machine.NameOf(p.Body.Member)}" : p.Body.IsRod ? $"rod of {machine.NameOf(p.Body.Member)}" : machine.NameOf(p.Body.Member),
        ["material"] = p.Material.Name,
        ["process"] = p.Process.Words(),
        ["massG"] = Number(p.Mass),
        ["partOf"] = p.PartOf,
    };

    private static JsonObject Joined(Parts.Joined j) => new()
    {
        ["name"] = j.Name,
        ["by"] = j.By,
        ["parts"] = new JsonArray([.. j.Parts.Select(p => JsonValue.Create(p.Name))]),
        ["massG"] = Number(j.Mass),
    };

    private static JsonObject Clearance(Parts.Clearance c) => new()
    {
        ["a"] = c.A.Name,
        ["b"] = c.B.Name,
        ["minMm"] = Number(c.Min),
        ["limitMm"] = Number(c.Least),
        ["atCrankDeg"] = Proof.Deg(c.AtCrank),
        ["onA"] = new JsonArray(c.OnA.X, c.OnA.Y, c.OnA.Z),
        ["onB"] = new JsonArray(c.OnB.X, c.OnB.Y, c.OnB.Z),
        ["firstBelowCrankDeg"] = c.FirstBelow is { } f ? Proof.Deg(f) : null,
    };

    private static JsonObject Finding(Finding f) => new()
    {
        ["level"] = f.Level.ToString().ToLowerInvariant(),
        ["check"] = f.Check,
        ["subject"] = f.Subject,
        ["crankDeg"] = f.From is { } from ? new JsonArray(Number(from), Number(f.To ?? from)) : null,
        ["measured"] = Number(f.Measured),
        ["limit"] = Number(f.Limit),
        ["unit"] = f.Unit,
        ["message"] = f.Message,
        ["advice"] = f.Advice,
    };

    private static JsonArray Array(IEnumerable<JsonObject> items) => new([.. items]);

    /// <summary>A number; null for one that does not exist.</summary>
    internal static JsonNode? Number(double d) => double.IsFinite(d) ? JsonValue.Create(d) : null;

    private static double Round(double ms) => Math.Round(ms, 3);
}
