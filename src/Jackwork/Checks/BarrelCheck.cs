using Jackwork.Barrels;

namespace Jackwork.Checks;

/// <summary>A barrel cam whose groove runs off its drum, folds, pushes too much sideways, goes too deep, binds, rattles, or differs from turn to turn.</summary>
/// <remarks>The limits of the pressure angle are those of plate cams.</remarks>
internal sealed class BarrelCheck : ICheck
{
    /// <summary>Wood that must be left beside the groove at either end of the drum, mm (common practice, no source).</summary>
    private const double Land = 2;

    /// <summary>How far (mm) the walls as cut may overlap with the roller before they bind, and difference between turns taken for rounding, mm.</summary>
    private const double Give = 2 * Cams.CamOutline.FitTolerance, Rounding = 1e-4;

    public string Name => "barrel";

    public IEnumerable<Finding> Run(Proof proof) =>
        proof.Barrels.SelectMany(b => proof.Machine.Acted.Where(a => a.Cam == b.Drive && proof.IsSound(a)).SelectMany(a => Of(proof, b, a)));

    private IEnumerable<Finding> Of(Proof proof, Barrel barrel, Motion.Acted acted)
    {
        var (name, groove, spec) = (proof.Machine.NameOf(barrel.Drive.Driven), barrel.Groove, barrel.Drive.Spec);
        var shaft = barrel.Drive.Driver;
        var (low, high) = groove.Reach;
        if (low - barrel.From < Land - Rounding)
        {
            yield return new(
                Level.Fault, Name, name, null, null, spec.Length, high - low + 2 * Land, "mm",
                FormattableString.Invariant($"the drum of '{name}' is {spec.Length:0.##} mm long, but its groove reaches over {high - low:0.##} mm and wants {Land:0.#} mm of wood beside it at either end"),
                FormattableString.Invariant($"Give a length of {Math.Ceiling(high - low + 2 * Land):0} mm or more, or ask a smaller move"));
        }

        var aside = 0.0;
        foreach (var q in proof.Motion.Of(barrel.Drive.Driven))
        {
            aside = Math.Max(aside, Math.Abs(barrel.Follower.Place(q).W.Value));
        }

        if (aside > BarrelFollower.Side * spec.Radius)
        {
            yield return new(
                Level.Fault, Name, name, null, null, aside, BarrelFollower.Side * spec.Radius, "mm",
                FormattableString.Invariant($"the roller of '{name}' swings {aside:0.##} mm to the side of the shaft, off the drum of {spec.Radius:0.##} mm radius; its groove was not worked out there"),
                "Lengthen the arm, ask a smaller swing, or enlarge the drum");
        }

        var axle = proof.Machine.Members[shaft].Joint;
        var floor = (spec.At - axle.Through).Across(axle.Along).Length - spec.BoreDiameter / 2;
        if (floor < proof.Limits.Rim)
        {
            yield return new(
                Level.Fault, Name, name, null, null, floor, proof.Limits.Rim, "mm",
                FormattableString.Invariant($"the groove of '{name}' leaves {floor:0.##} mm of wood over the bore of its drum, limit {proof.Limits.Rim:0.##} mm"),
                "Set the roller's inner end farther out, or give a smaller bore");
        }

        var limit = proof.Limits.PressureAngle(barrel.Follower.Turns);
        if (groove.MaxPressureAngle > limit * (1 - Limits.Close / 2))
        {
            var at = proof.At(groove.MaxPressureStep);
            yield return new(
                groove.MaxPressureAngle > limit ? Level.Fault : Level.Caution, Name, name, Proof.Deg(at), Proof.Deg(at), Proof.Deg(groove.MaxPressureAngle), Proof.Deg(limit), "deg",
                FormattableString.Invariant($"the groove of '{name}' pushes its roller {(groove.MaxPressureAngle > limit ? "too much" : "nearly too much")} sideways: pressure angle {Proof.Deg(groove.MaxPressureAngle):0.#}° at {proof.Where(at, shaft)}, limit {Proof.Deg(limit):0.#}°"),
                FormattableString.Invariant($"Enlarge the drum (now {spec.Radius:0.##} mm radius) to {Math.Ceiling(groove.RadiusFor(limit)):0} mm, spread the move over more of the turn, or ask a smaller move"));
        }

        if (groove.MinWallRadius < proof.Limits.ConvexRadius)
        {
            var at = proof.At(groove.MinRadiusStep);
            yield return new(
                Level.Fault, Name, name, Proof.Deg(at), Proof.Deg(at), groove.MinWallRadius, proof.Limits.ConvexRadius, "mm",
                groove.MinWallRadius < 0
                    ? FormattableString.Invariant($"a wall of the groove of '{name}' is undercut at {proof.Where(at, shaft)}: it would fold over (radius {groove.MinWallRadius:0.##} mm), and the groove does not guide the roller there")
                    : FormattableString.Invariant($"a wall of the groove of '{name}' comes to a sharp ridge at {proof.Where(at, shaft)}: radius {groove.MinWallRadius:0.##} mm, limit {proof.Limits.ConvexRadius:0.##} mm"),
                FormattableString.Invariant($"Enlarge the drum (now {spec.Radius:0.##} mm radius), use a smaller roller, or spread the move over more of the turn"));
        }

        var difference = barrel.Unlike.Difference * barrel.Follower.Reach;
        if (difference > Rounding)
        {
            var at = proof.At(barrel.Unlike.Step);
            yield return new(
                Level.Fault, Name, name, Proof.Deg(at), Proof.Deg(at), difference, 0, "mm",
                FormattableString.Invariant($"the barrel of '{name}' turns with '{proof.Machine.NameOf(shaft)}', but its turns ask different things of the roller: {difference:0.##} mm apart at {proof.Where(at, shaft)}"),
                $"Put the barrel on a shaft that turns once for each turn of '{proof.Machine.NameOf(acted.Shaft)}' (or more slowly by a whole number), or write the chart over '{proof.Machine.NameOf(shaft)}'");
        }

        var play = proof.AsCutOf(barrel.Drive.Driven).Play!.Value;
        if (play.Open is null && (play.Least < -Give || play.Most > proof.Limits.ReturnPlay))
        {
            var binds = play.Least < -Give;
            var at = binds ? play.LeastAt : play.MostAt;
            yield return new(
                binds ? Level.Fault : Level.Caution, Name, name, Proof.Deg(at), Proof.Deg(at), binds ? play.Least : play.Most, binds ? 0 : proof.Limits.ReturnPlay, "mm",
                binds
                    ? FormattableString.Invariant($"as cut, the roller of '{name}' binds in its groove at {proof.Where(at, shaft)}: it is {-play.Least:0.###} mm too tight")
                    : FormattableString.Invariant($"the roller of '{name}' rattles in its groove: {play.Most:0.##} mm of play at {proof.Where(at, shaft)}, limit {proof.Limits.ReturnPlay:0.##} mm"),
                FormattableString.Invariant($"Give {(binds ? "more" : "less")} clearance (now {barrel.Clearance:0.##} mm)"));
        }
    }
}
