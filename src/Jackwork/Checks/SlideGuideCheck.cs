using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Checks;

/// <summary>Slides whose rod has no guide, or runs out of it.</summary>
internal sealed class SlideGuideCheck : ICheck
{
    /// <summary>How far a rod's end may fall short of its guide's, mm: what a lathe holds.</summary>
    private const double Short = 0.05;

    public string Name => "slide-guide";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var rod in proof.Assembly.Parts.Where(p => p.Kind == PartKind.Slide && proof.Machine.Members[p.Body.Member].Joint.Kind == JointKind.Slide))
        {
            var (machine, m) = (proof.Machine, rod.Body.Member);
            var along = machine.Members[m].Joint.Along;
            var travel = GuideParts.Travel(proof.Motion, m);
            var always = (From: Least(rod, along) + travel.High, To: -Least(rod, -along) + travel.Low);
            if (proof.Assembly.Parts.FirstOrDefault(p => p.Kind == PartKind.Guide && p.Name == $"{machine.NameOf(m)} guide") is not { } guide)
            {
                if (machine.Design.Members[machine.NameOf(m)].Body?.Guide?.Length != 0)
                {
                    yield return new(
                        Level.Caution, Name, rod.Name, null, null, always.To - always.From, 2 * rod.Pieces[0].Radii[0], "mm",
                        FormattableString.Invariant($"'{rod.Name}' has no guide: there is no room along it, clear of its pin, that it covers throughout"),
                        FormattableString.Invariant($"Make the rod longer by the 'from' and 'to' of its body, or say where it runs by its 'guide' ('length: 0' where it runs in something else)"));
                }

                continue;
            }

            var (from, to) = (Least(guide, along), -Least(guide, -along));
            var bare = Math.Max(always.From - from, to - always.To);
            if (bare > Short)
            {
                yield return new(
                    Level.Fault, Name, rod.Name, null, null, bare, 0, "mm",
                    FormattableString.Invariant($"'{rod.Name}' leaves its guide by {bare:0.##} mm at one end of its travel"),
                    FormattableString.Invariant($"Make it reach {bare:0.##} mm farther {(to - always.To > always.From - from ? "by the 'to'" : "back by the 'from'")} of its body, or set the guide's middle elsewhere by 'at'"));
            }
        }
    }

    // Where a part begins along a direction, mm.
    private static double Least(Part part, Geometry.Vec3 d) => part.Pieces.Min(p => (p.Support(-d) - default(Geometry.Point3)).Dot(d));
}
