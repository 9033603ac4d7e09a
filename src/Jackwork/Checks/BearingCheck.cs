using Jackwork.Parts;

namespace Jackwork.Checks;

/// <summary>Bushes too narrow for the rod in them or without a board to stand in, and posts without room for their bore; none of them is made.</summary>
internal sealed class BearingCheck : ICheck
{
    public string Name => "bearing";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        var (machine, parts) = (proof.Machine, proof.Assembly.Parts);
        foreach (var rod in parts.Where(p => p.Kind is PartKind.Shaft or PartKind.Axle))
        {
            if (BushParts.For(machine, rod) is not { } bush)
            {
                continue;
            }

            var member = machine.NameOf(rod.Bears ?? rod.Body.Member);
            if (!BushParts.HasWall(bush, Diameter(rod)))
            {
                yield return Narrow(member, BushParts.Outside(bush, Diameter(rod)), rod);
            }
            else if (!parts.Any(p => p.Kind == PartKind.Bush && p.Name.StartsWith(member + " bush ", StringComparison.Ordinal)))
            {
                yield return new(
                    Level.Caution, Name, member, null, null, 0, 1, "bushes",
                    $"'{member}' asks for bushes, but '{rod.Name}' crosses no board that has room for one",
                    "Let it reach through a board, or give the bush to a 'support', or remove it");
            }
        }

        foreach (var (name, part) in machine.Design.Parts ?? Design.NamedMap<Design.PartSpec>.Empty)
        {
            if (part.Support is not { } support || SupportParts.RodOf(machine, support, parts) is not { } rod)
            {
                continue;
            }

            if (support.Bush is { } bush && !BushParts.HasWall(bush, Diameter(rod)))
            {
                yield return Narrow(name, BushParts.Outside(bush, Diameter(rod)), rod);
            }

            var post = parts.First(p => p.Name == name).Plates[0];
            if (post.Holes.Length == 0)
            {
                var (min, max) = post.Rim.Bounds();
                yield return new(
                    Level.Fault, Name, name, null, null, max.X - min.X, Diameter(rod), "mm",
                    FormattableString.Invariant($"'{name}', {max.X - min.X:0.##} mm wide and {-min.Y:0.##} mm from its board to the axis, has no room for the bore that '{rod.Name}' of {Diameter(rod):0.##} mm runs in"),
                    "Give it a greater 'width', or a narrower bush, or let it stand on a board farther from the axis");
            }
        }
    }

    private Finding Narrow(string subject, double outside, Part rod) => new(
        Level.Fault, Name, subject, null, null, outside, Diameter(rod) + Fits.Running, "mm",
        FormattableString.Invariant($"a bush of {outside:0.##} mm has no wall round '{rod.Name}' of {Diameter(rod):0.##} mm"),
        FormattableString.Invariant($"Give it an 'outside' of {Diameter(rod) + 2:0.##} mm or more"));

    private static double Diameter(Part rod) => 2 * rod.Pieces[0].Radii[0];
}
