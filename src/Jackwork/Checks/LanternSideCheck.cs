using Jackwork.Lanterns;

namespace Jackwork.Checks;

/// <summary>Lanterns whose pins drive: all contact is then before the line of centres.</summary>
/// <remarks>Flank and pin rub towards the line of centres, against the push, where after it they rub with it; lanterns are best driven (R. Willis, Principles of Mechanism, 1841, from memory).</remarks>
internal sealed class LanternSideCheck : ICheck
{
    public string Name => "lantern-side";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var l in proof.MechanismsOf<LanternWork>().Where(l => l.Impossible is null && l.Drive.PinsDrive))
        {
            yield return new(
                Level.Note, Name, l.Name, null, null, Proof.Deg(l.Sizes.PressureAngle), 0, "deg",
                FormattableString.Invariant($"the pins on '{proof.Machine.NameOf(l.Drive.Driver)}' drive the wheel of '{l.Name}', so they touch its teeth before the line of centres only, first at a pressure angle of {Proof.Deg(l.Sizes.PressureAngle):0.#} deg: it runs more harshly than a lantern that is driven"),
                "Let the pins turn in their discs, polish the teeth, or put the pins on the driven member");
        }
    }
}
