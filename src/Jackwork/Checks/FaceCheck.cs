namespace Jackwork.Checks;

/// <summary>A flat face that is too narrow for the travel of its contact.</summary>
internal sealed class FaceCheck : ICheck
{
    public string Name => "face-width";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, acted, _) in proof.SoundCams)
        {
            if (acted.Cam.Spec.Follower.Flat is not { } width)
            {
                continue;
            }

            var need = 2 * Math.Max(-cam.Profile.Face.Least, cam.Profile.Face.Most);
            if (need > width)
            {
                yield return new(
                    Level.Fault, Name, cam.Name, null, null, width, need, "mm",
                    FormattableString.Invariant($"the flat face of '{cam.Name}' is {width:0.##} mm wide, but the contact runs from {cam.Profile.Face.Least:0.##} to {cam.Profile.Face.Most:0.##} mm off its middle"),
                    FormattableString.Invariant($"Make the face at least {Math.Ceiling(need):0} mm wide, or set its middle over by {(cam.Profile.Face.Least + cam.Profile.Face.Most) / 2:0.#} mm"));
            }
        }
    }
}
