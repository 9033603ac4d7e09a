namespace Jackwork.Design;

/// <summary>Looks through what a design says of case, bodies and parts.</summary>
internal static class SolidProblems
{
    private static readonly string[] Sides = ["left", "right", "bottom", "top", "back", "front"];

    /// <summary>Notes every problem of case, bodies, parts and meant contacts.</summary>
    public static void Note(DesignSpec spec, ProblemList problems)
    {
        NoteCase(spec, problems);
        foreach (var (name, member) in spec.Members)
        {
            NoteMaterial(member.Body?.Material, $"members.{name}.body.material", problems);
            if (member.Body is { From: { } from, To: { } to } && from >= to)
            {
                problems.Add($"members.{name}.body.from", FormattableString.Invariant($"it begins at {from} mm and ends at {to} mm"), "Let it end beyond where it begins");
            }
        }

        foreach (var (name, part) in spec.Parts ?? NamedMap<PartSpec>.Empty)
        {
            NotePart(spec, name, part, problems);
        }

        HardwareProblems.Note(spec, problems);
        NoteTouching(spec, problems);
    }

    private static void NoteCase(DesignSpec spec, ProblemList problems)
    {
        if (spec.Case is not { } box)
        {
            return;
        }

        var (a, b) = (box.Inside[0], box.Inside[1]);
        if (a.X >= b.X || a.Y >= b.Y || a.Z >= b.Z)
        {
            problems.Add("case.inside", FormattableString.Invariant($"the inside from [{a.X}, {a.Y}, {a.Z}] to [{b.X}, {b.Y}, {b.Z}] has no room"), "Give the corner with the smaller coordinates first, the opposite one second");
        }

        NoteMaterial(box.Material, "case.material", problems);
        foreach (var (side, i) in (box.Open ?? []).Select((s, i) => (s, i)))
        {
            if (!Sides.Contains(side))
            {
                problems.Add($"case.open.{i + 1}", $"the case has no side '{side}'", Names.Suggest(side, Sides));
            }
        }

        foreach (var (o, i) in (box.Openings ?? []).Select((o, i) => (o, i)))
        {
            if (o.Hole is null == o.Size is null)
            {
                problems.Add($"case.openings.{i + 1}", o.Hole is null ? "the opening has no size" : "the opening has both a hole and a size", "Give either 'hole: 20' or 'size: [30, 40]'");
            }
        }
    }

    private static void NotePart(DesignSpec spec, string name, PartSpec part, ProblemList problems)
    {
        var path = $"parts.{name}";
        if (part.On is { } on && on != Names.Case && !spec.Members.Contains(on))
        {
            problems.Add($"{path}.on", $"there is no member '{on}' to carry '{name}'", Names.Suggest(on, [.. spec.Members.Names]));
        }

        if (spec.Members.Contains(name))
        {
            problems.Add(path, $"'{name}' is the name of a member", "Give the part a name of its own, such as '" + name + "-board'");
        }

        NoteMaterial(part.Material, $"{path}.material", problems);
        object?[] shapes = [part.Box, part.Rod, part.Tube, part.Ball, part.Turned, part.Carved, part.Mesh, part.Support, part.Washer, part.Screw];
        if (shapes.Count(s => s is not null) != 1)
        {
            problems.Add(path, shapes.All(s => s is null) ? $"'{name}' has no shape" : $"'{name}' has more than one shape", "Give it exactly one of box, rod, tube, ball, turned, carved, mesh, support, washer and screw");
        }

        if (part.Rod is { } r && r.From == r.To)
        {
            problems.Add($"{path}.rod.to", "both ends of the rod are at one point", "Set the ends apart");
        }

        if (part.Tube is { } t && (t.From == t.To || t.Bore >= t.Diameter))
        {
            problems.Add($"{path}.tube", t.From == t.To ? "both ends of the tube are at one point" : FormattableString.Invariant($"a bore of {t.Bore} mm leaves no wall in a tube of {t.Diameter} mm"), t.From == t.To ? "Set the ends apart" : "Give a bore smaller than the diameter");
        }

        if (part.Turned is { } turned)
        {
            NoteProfile(turned, path, problems);
        }

        if (part.Carved is { Count: < 4 } or { Count: > 60 })
        {
            problems.Add($"{path}.carved", $"a carved block of {part.Carved.Count} points", "Give from 4 to 60 points");
        }
    }

    private static void NoteProfile(TurnedSpec turned, string path, ProblemList problems)
    {
        if (turned.Profile.Count < 2)
        {
            problems.Add($"{path}.turned.profile", "the profile has fewer than two places", "Give at least two pairs [distance, diameter]");
        }

        for (var i = 0; i < turned.Profile.Count; i++)
        {
            var pair = turned.Profile[i];
            if (pair.Count != 2 || pair[1] < 0)
            {
                problems.Add($"{path}.turned.profile.{i + 1}", "this is no pair of a distance and a diameter of 0 or more", "Write [distance, diameter]");
                return;
            }

            if (i > 0 && (pair[0] <= turned.Profile[i - 1][0] || (pair[1] == 0 && turned.Profile[i - 1][1] == 0)))
            {
                problems.Add($"{path}.turned.profile.{i + 1}", FormattableString.Invariant($"the place {pair[0]} mm does not lie beyond {turned.Profile[i - 1][0]} mm, or both have no thickness"), "Let the distances rise, and give at least every second place a diameter");
                return;
            }
        }
    }

    private static void NoteTouching(DesignSpec spec, ProblemList problems)
    {
        foreach (var (pair, i) in (spec.Touching ?? []).Select((p, i) => (p, i)))
        {
            if (pair.Count != 2)
            {
                problems.Add($"touching.{i + 1}", $"{pair.Count} names where two are meant to touch", "Write [one, other]");
            }
        }
    }

    /// <summary>Notes a material that the table doesn't have.</summary>
    public static void NoteMaterial(string? material, string path, ProblemList problems)
    {
        if (material is not null && Material.Find(material) is null)
        {
            problems.Add(path, $"the table of materials has no '{material}'", Names.Suggest(material, [.. Material.All.Select(m => m.Name)]));
        }
    }
}
