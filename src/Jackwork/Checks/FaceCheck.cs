using Jackwork.Cams;

namespace Jackwork.Checks;

/// <summary>A flat face that is too narrow for the travel of its contact.</summary>
internal sealed class FaceCheck : ICheck
{
    public string Name => "face-width";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, _, _) in proof.SoundCams)
        {
            if (cam.Spec.Follower.Flat is not { } width)
            {
                continue;
            }

            var (least, most) = Contact(cam);
            var need = 2 * Math.Max(-least, most);
            if (need > width)
            {
                yield return new(
                    Level.Fault, Name, cam.Name, null, null, width, need, "mm",
                    FormattableString.Invariant($"the flat face of '{cam.Name}' is {width:0.##} mm wide, but the contact runs from {least:0.##} to {most:0.##} mm off its middle"),
                    FormattableString.Invariant($"Make the face at least {Math.Ceiling(need):0} mm wide, or set its middle over by {(least + most) / 2:0.#} mm"));
            }
        }
    }

    // Where the contact runs along the face; along both faces of a yoke, the second seen from the side of the first.
    private static (double Least, double Most) Contact(Cam cam) => cam.Return is YokeFace { Profile.Face: var second }
        ? (Math.Min(cam.Profile.Face.Least, -second.Most), Math.Max(cam.Profile.Face.Most, -second.Least))
        : cam.Profile.Face;
}
