using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Timing.Laws;

namespace Jackwork.Drops;

/// <summary>One drop of a cam: its face, and the fall as it truly is.</summary>
/// <remarks>The outline itself is the cam's. What falls is known once the parts are, so the fall is worked out when first asked for.</remarks>
public sealed class DropWork : Mechanism
{
    private readonly Lazy<(FallingBodies Bodies, FallTable Table, TrueFall Fall)> falling;
    private readonly Lazy<DropSizes> sizes;

    private DropWork(Proof proof, Cam cam, DropFace face)
        : base(proof.Machine, cam.FollowerMember)
    {
        (Proof, Cam, Face) = (proof, cam, face);
        falling = new(() =>
        {
            var bodies = new FallingBodies(proof, cam, face.Fall.From);
            var table = FallTable.Of(face.Fall, cam.Follower.Reach, bodies.At);
            return (bodies, table, TrueFall.Of(face, table, proof.Machine.CrankSpeed));
        });
        sizes = new(() => new(face, falling.Value.Table, proof.Machine.CrankSpeed));
    }

    /// <summary>What it was worked out with.</summary>
    internal Proof Proof { get; }

    /// <summary>The cam.</summary>
    public Cam Cam { get; }

    /// <summary>Its face.</summary>
    public DropFace Face { get; }

    /// <summary>The acted member that it serves.</summary>
    public Acted Acted => Proof.ActedOf(Cam);

    /// <summary>The fall at the design's speed of the crank.</summary>
    public TrueFall Fall => falling.Value.Fall;

    /// <summary>What speed, angle and spring the fall asks for.</summary>
    public DropSizes Sizes => sizes.Value;

    /// <summary>Crank angle that the fall may take: as drawn, rad.</summary>
    public double Drawn => Face.Fall.Length;

    /// <summary>How far the follower's point falls, along its path, mm.</summary>
    public double Height => Cam.Follower.Reach * Math.Abs(Face.Fall.Low - Face.Fall.Q.Value);

    /// <summary>The members that fall.</summary>
    public IReadOnlyList<string> Falling => falling.Value.Bodies.Members;

    /// <summary>Mass of all that falls, g.</summary>
    public double Mass => falling.Value.Bodies.Mass;

    /// <summary>Degrees of the chart's shaft for a crank angle in rad.</summary>
    public double ShaftDeg(double crank) => Checks.Proof.Deg(crank) * Math.Abs(Machine.Turns[Acted.Shaft]!.Value.Value);

    /// <summary>Place in the turn of the chart's shaft of a crank angle after the beginning of the fall, degrees as the chart counts them; past 360 where it runs on.</summary>
    public double Place(double since) => Checks.Proof.Deg(Acted.Chart.Pieces.First(p => p.MoveIndex == Face.Fall.MoveIndex && p.Law == MotionLaws.Drop).From) + ShaftDeg(since);

    /// <inheritdoc/>
    public override string Word => "drop cam";

    /// <inheritdoc/>
    public override string Folder => "drops";

    /// <inheritdoc/>
    public override string Contents => "what drop cams ask: how long their followers fall, how fast they land and may be turned, springs";

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables => [new(FormattableString.Invariant($"{Name} drop {Face.Fall.MoveIndex + 1}"), [.. Rows()])];

    /// <summary>The drops of a proof, in the order of its cams.</summary>
    internal static IEnumerable<Mechanism> Of(Proof proof) => proof.Machine.Acted.Any(a => a.Chart.Pieces.Any(p => p.Law == MotionLaws.Drop))
        ? proof.SoundCams.SelectMany(c => c.Cam.Drops.Select(d => new DropWork(proof, c.Cam, d)))
        : [];

    /// <inheritdoc/>
    public override JsonObject ToJson()
    {
        JsonNode? Lands(double value) => Fall.Outcome == FallOutcome.Lands ? ResultJson.Number(value) : null;
        return new()
        {
            ["name"] = Name,
            ["member"] = Machine.NameOf(Acted.Member),
            ["over"] = Machine.NameOf(Acted.Shaft),
            ["drawnFromDeg"] = ResultJson.Number(Place(0)),
            ["drawnToDeg"] = ResultJson.Number(Place(Drawn)),
            ["heightMm"] = ResultJson.Number(Height),
            ["falling"] = new JsonArray([.. Falling.Select(f => JsonValue.Create(f))]),
            ["massG"] = ResultJson.Number(Mass),
            ["outcome"] = Fall.Outcome.ToString().ToLowerInvariant(),
            ["fallMs"] = Lands(1000 * Fall.Time),
            ["fallDeg"] = Lands(ShaftDeg(Fall.CrankAngle)),
            ["onTipDeg"] = ResultJson.Number(ShaftDeg(Fall.Ridden)),
            ["landsAtDeg"] = Lands(Place(Fall.CrankAngle)),
            ["landingSpeedMmPerS"] = Lands(Fall.LandingSpeed),
            ["leastDeg"] = ResultJson.Number(ShaftDeg(Face.Needs)),
            ["fastestRpm"] = ResultJson.Number(Sizes.FastestRpm(Drawn)),
            ["fastestRpmBeforeNextMove"] = ResultJson.Number(Sizes.FastestRpm(Face.Fall.Free)),
            ["tipAngleDeg"] = ResultJson.Number(Checks.Proof.Deg(Face.TipAngle)),
            ["landMm"] = ResultJson.Number(Face.Land),
        };
    }

    private IEnumerable<(string What, double Value, string Unit)> Rows()
    {
        yield return ("height of the fall", Height, "mm");
        yield return ("mass that falls", Mass, "g");
        if (Fall.Outcome == FallOutcome.Lands)
        {
            yield return ("time of the fall", 1000 * Fall.Time, "ms");
            yield return ($"{Machine.NameOf(Acted.Shaft)} turns meanwhile", ShaftDeg(Fall.CrankAngle), "deg");
            yield return ("speed of landing", Fall.LandingSpeed, "mm/s");
            yield return ("fastest crank at which it lands as drawn", Sizes.FastestRpm(Drawn), "rpm");
        }

        yield return ("angle of the wood at the tip", Checks.Proof.Deg(Face.TipAngle), "deg");
        if (falling.Value.Bodies.SpringAt(Face.Fall.Q.Value) is { } up && falling.Value.Bodies.SpringAt(Face.Fall.Low) is { } down)
        {
            yield return ("spring up: length", up.Length, "mm");
            yield return ("spring up: pull", up.Pull, "N");
            yield return ("spring down: length", down.Length, "mm");
            yield return ("spring down: pull", down.Pull, "N");
        }
    }
}
