using Jackwork.Cams;

namespace Jackwork.Checks;

/// <summary>A yoke round a disc whose breadth changes as it turns.</summary>
internal sealed class YokeBreadthCheck : ICheck
{
    /// <summary>Change of breadth that can't be told from the cut, mm: twice what the fitted outline may stray.</summary>
    private const double Unseen = 2 * CamOutline.FitTolerance;

    public string Name => "yoke-breadth";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, _, _) in proof.SoundCams)
        {
            // An undercut disc is not the one that these breadths belong to, and its own check speaks.
            if (cam.Return is not YokeFace { Breadth: var breadth } yoke || breadth.Change <= Unseen || cam.Profile.IsUndercut)
            {
                continue;
            }

            var (at, wide) = (proof.At(breadth.LeastStep), proof.At(breadth.MostStep));
            var limit = Math.Max(0, proof.Limits.ReturnPlay - yoke.Clearance);
            yield return new(
                breadth.Change > limit ? Level.Fault : Level.Caution, Name, cam.Name, Proof.Deg(at), Proof.Deg(at), breadth.Change, limit, "mm",
                FormattableString.Invariant($"the disc in the yoke of '{cam.Name}' is not of constant breadth: {breadth.Least:0.##} mm at {proof.Where(at, cam.Shaft)}, but {breadth.Most:0.##} mm at {proof.Where(wide, cam.Shaft)}, so that the yoke is loose by {breadth.Change:0.##} mm more than its clearance"),
                "Write the return as the mirror of the rise, half a turn of the shaft later and by the same law, so that the lifts at any two angles 180° apart add up to the same; or use 'groove' or 'second', which take any motion");
        }
    }
}
