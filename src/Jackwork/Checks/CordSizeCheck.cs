using Jackwork.Cords;

namespace Jackwork.Checks;

/// <summary>Pulleys and drums that bend the cord too tightly or leave too little of themselves, and drums without the turns that hold the cord or without room for it.</summary>
internal sealed class CordSizeCheck : ICheck
{
    public string Name => "cord-size";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<CordWork>())
        {
            for (var k = 0; k < w.Drive.Run.Leads.Count; k++)
            {
                var spec = w.Drive.Spec.Run[k];
                if ((spec.Pulley ?? spec.Drum) is not { } diameter)
                {
                    continue;
                }

                foreach (var finding in Disc(proof, w, k, diameter).Concat(spec.Drum is null ? [] : Drum(proof, w, k)))
                {
                    yield return finding;
                }
            }
        }
    }

    private IEnumerable<Finding> Disc(Proof proof, CordWork w, int k, double diameter)
    {
        var (spec, name) = (w.Drive.Spec.Run[k], w.Called(k));
        var bend = diameter / w.Diameter;
        if (bend < CordSizes.LeastBend)
        {
            yield return new(
                Level.Caution, Name, w.Name, null, null, bend, CordSizes.LeastBend, "",
                FormattableString.Invariant($"the {name} of '{w.Name}' of {diameter:0.##} mm is {bend:0.#} times as thick as its cord of {w.Diameter:0.##} mm: so tight a bend wears it out"),
                FormattableString.Invariant($"Take a diameter of {CordSizes.LeastBend * w.Diameter:0.##} mm or more, or a thinner cord"));
        }

        var hole = spec.Drum is null ? spec.Pin ?? CordSizes.UsualPin : spec.Bore ?? Design.HubbedSpec.UsualBore;
        var (wall, least) = ((diameter - hole) / 2, proof.Limits.Rim);
        if (wall < least)
        {
            yield return new(
                wall <= 0 ? Level.Fault : Level.Caution, Name, w.Name, null, null, wall, least, "mm",
                FormattableString.Invariant($"of the {name} of '{w.Name}' only {wall:0.##} mm are left between its {(spec.Drum is null ? "groove" : "face")} and its hole of {hole:0.##} mm, limit {least:0.##} mm"),
                spec.Drum is null ? "Take a thinner 'pin' or a larger pulley" : "Take a smaller 'bore' or a larger drum");
        }

        var room = CordSizes.GrooveWidth(w.Diameter);
        if (spec is { Pulley: not null, Thickness: { } thickness } && thickness < room)
        {
            yield return new(
                Level.Fault, Name, w.Name, null, null, thickness, room, "mm",
                FormattableString.Invariant($"the {name} of '{w.Name}' is {thickness:0.##} mm thick, but its groove alone is {room:0.##} mm wide"),
                FormattableString.Invariant($"Make it {CordSizes.PulleyThickness(spec with { Thickness = null }, w.Diameter):0.##} mm thick"));
        }
    }

    private IEnumerable<Finding> Drum(Proof proof, CordWork w, int k)
    {
        var (r, name) = (w.Range.Wraps[k], w.Called(k));
        var (least, most) = (r.Least / (2 * Math.PI), r.Most / (2 * Math.PI));
        if (least < CordSizes.GripTurns)
        {
            var at = Proof.Deg(proof.At(r.LeastStep));
            yield return new(
                least <= 0 ? Level.Fault : Level.Caution, Name, w.Name, at, at, least, CordSizes.GripTurns, "turns",
                least <= 0
                    ? FormattableString.Invariant($"the cord of '{w.Name}' is all off its {name} at {proof.Where(proof.At(r.LeastStep), proof.Machine.Crank)}: {-least:0.##} turns are missing")
                    : FormattableString.Invariant($"only {least:0.##} turns are left on the {name} of '{w.Name}' at {proof.Where(proof.At(r.LeastStep), proof.Machine.Crank)} to hold its end"),
                FormattableString.Invariant($"Wind on more as drawn: 'turns: {Math.Ceiling(2 * ((w.Drive.Spec.Run[k].Turns ?? CordSizes.UsualTurns) + CordSizes.GripTurns - least)) / 2:0.#}'"));
        }

        var (length, needed) = (w.DrumLength(k), CordSizes.DrumLength(most, w.Diameter));
        if (length < needed)
        {
            var at = Proof.Deg(proof.At(r.MostStep));
            yield return new(
                Level.Fault, Name, w.Name, at, at, length, needed, "mm",
                FormattableString.Invariant($"the {name} of '{w.Name}' has {length:0.##} mm between its cheeks, but {most:0.##} turns side by side need {needed:0.##} mm: the cord would climb on itself and wind faster"),
                FormattableString.Invariant($"Give it 'thickness: {Math.Ceiling(2 * needed) / 2:0.#}', or a larger diameter"));
        }
    }
}
