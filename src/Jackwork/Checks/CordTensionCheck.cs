using Jackwork.Cords;
using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>Cords that go slack, that nothing keeps taut, that are pulled too hard or that give too much.</summary>
internal sealed class CordTensionCheck : ICheck
{
    public string Name => "cord-tension";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<CordWork>())
        {
            if (w.Tension is not { } t)
            {
                continue;
            }

            var wanted = w.Drive.Spec.Least ?? CordSizes.UsualLeast;
            if (t.Least.Newton < wanted)
            {
                yield return Slack(proof, w, t, wanted);
            }

            var (limit, strands) = (CordSizes.Load * w.Strength, t.Most.Strand);
            if (t.Most.Newton > limit)
            {
                var at = Proof.Deg(proof.At(t.Most.Step));
                yield return new(
                    t.Most.Newton > w.Strength ? Level.Fault : Level.Caution, Name, w.Name, at, at, t.Most.Newton, limit, "N",
                    FormattableString.Invariant($"the cord of '{w.Name}' is pulled with {t.Most.Newton:0.##} N between {w.Called(strands)} and {w.Called(strands + 1)} at {proof.Where(proof.At(t.Most.Step), proof.Machine.Crank)}; it breaks at {w.Strength:0.##} N, and knots and wear ask that it carry no more than {limit:0.##} N"),
                    "Take a thicker cord, say its strength if it is stronger, or make what it moves lighter");
            }

            if (t.Lag is var (low, high))
            {
                var member = proof.Machine.Members[w.Drive.Driven];
                yield return new(
                    Level.Note, Name, w.Name, null, null, high / member.UnitSize, 0, member.Unit,
                    FormattableString.Invariant($"for the stretch of its cord '{w.Name}' lags by {low / member.UnitSize:0.###} to {high / member.UnitSize:0.###} {(member.Unit == "deg" ? "°" : member.Unit)}"),
                    "The least of it goes when the cord is tied with its load on; a stiffer cord, or less weight, leaves less of the rest");
            }
        }
    }

    private Finding Slack(Proof proof, CordWork w, CordTension t, double wanted)
    {
        var at = Proof.Deg(proof.At(t.Least.Step));
        var slack = t.Least.Newton <= 0;
        var said = !t.EverPulls
            ? $"nothing keeps the cord of '{w.Name}' taut: neither its weight nor a spring pulls '{w.Name}' against it"
            : FormattableString.Invariant($"the cord of '{w.Name}' {(slack ? "goes slack" : "is hardly taut")} at {proof.Where(proof.At(t.Least.Step), proof.Machine.Crank)}: {Math.Max(0, t.Least.Newton):0.###} N are left between {w.Called(t.Least.Strand)} and {w.Called(t.Least.Strand + 1)}, limit {wanted:0.##} N");
        return new(slack ? Level.Fault : Level.Caution, Name, w.Name, at, at, t.Least.Newton, wanted, "N", said, Remedy(proof, w, t));
    }

    private static string Remedy(Proof proof, CordWork w, CordTension t)
    {
        var slides = proof.Machine.Members[w.Drive.Driven].Joint.Kind == JointKind.Slide;
        return t switch
        {
            { Newtons: { } n } => FormattableString.Invariant($"Let the spring pull {w.Drive.Spec.Spring!.Pull + n:0.##} N as drawn, or turn more slowly"),
            { Grams: { } g } => FormattableString.Invariant($"Make '{w.Name}' {Math.Ceiling(10 * g) / 10:0.#} g heavier, give the cord a 'spring', or turn more slowly"),
            _ => FormattableString.Invariant($"Give the cord a 'spring' that pulls '{w.Name}' against it with {t.Short:0.##} {(slides ? "N along its travel" : "Nmm about its axis")} more at the least"),
        };
    }
}
