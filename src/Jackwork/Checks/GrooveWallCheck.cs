using Jackwork.Cams;

namespace Jackwork.Checks;

/// <summary>The outer wall of a groove where it folds, comes to a point, or can't be cut.</summary>
/// <remarks>The inner wall is the plate cam's own outline, which the checks of plate cams look at.</remarks>
internal sealed class GrooveWallCheck : ICheck
{
    /// <summary>Thickness left standing that no file would find, mm.</summary>
    private const double Nothing = 0.01;

    public string Name => "groove-wall";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, _, _) in proof.SoundCams)
        {
            if (cam.Return is not GrooveWall wall)
            {
                continue;
            }

            var at = proof.At(wall.Profile.MinConcaveStep);
            var where = proof.Where(at, cam.Shaft);
            var radius = wall.Profile.MinConcaveRadius;
            var limit = proof.Limits.ConvexRadius;
            if (radius < limit)
            {
                yield return new(
                    Level.Fault, Name, cam.Name, Proof.Deg(at), Proof.Deg(at), radius, limit, "mm",
                    radius < 0
                        ? FormattableString.Invariant($"the outer wall of the groove of '{cam.Name}' is undercut at {where}: it would fold over (radius {radius:0.##} mm), so the groove opens there and does not guide the roller")
                        : FormattableString.Invariant($"the outer wall of the groove of '{cam.Name}' comes to a sharp ridge at {where}: radius {radius:0.##} mm, limit {limit:0.##} mm"),
                    FormattableString.Invariant($"Enlarge the base circle (now {cam.BaseRadius:0.##} mm), use a smaller roller, or start the move more gently"));
            }

            if (wall.Loop.Unreached > Nothing)
            {
                yield return new(
                    Level.Caution, Name, cam.Name, null, null, wall.Loop.Unreached, 0, "mm",
                    FormattableString.Invariant($"a cutter of {proof.Cutter:0.##} mm leaves {wall.Loop.Unreached:0.###} mm standing in the corners of the outer wall of the groove of '{cam.Name}'"),
                    "Use a smaller cutter, or finish the corners by hand; whether the roller binds there stands under 'cam-return'");
            }
        }
    }
}
