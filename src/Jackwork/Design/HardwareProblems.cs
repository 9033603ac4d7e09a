using Jackwork.Hardware;

namespace Jackwork.Design;

/// <summary>Looks through washers, screws, supports, bushes, guides, colours and joined parts.</summary>
internal static class HardwareProblems
{
    /// <summary>Notes every problem of them.</summary>
    public static void Note(DesignSpec spec, ProblemList problems)
    {
        foreach (var (name, member) in spec.Members)
        {
            NoteBody(member, $"members.{name}.body", problems);
        }

        foreach (var (name, part) in spec.Parts ?? NamedMap<PartSpec>.Empty)
        {
            var path = $"parts.{name}";
            NoteColour(part.Colour, path, problems);
            NoteWasher(part.Washer, $"{path}.washer", problems);
            NoteScrew(part.Screw, $"{path}.screw", problems);
            NoteSupport(spec, part, path, problems);
        }

        JoinedProblems.Note(spec, problems);
    }

    private static void NoteBody(MemberSpec member, string path, ProblemList problems)
    {
        SolidProblems.NoteMaterial(member.Body?.AxleMaterial, $"{path}.axle-material", problems);
        SolidProblems.NoteMaterial(member.Body?.Guide?.Material, $"{path}.guide.material", problems);
        NoteRod(member.Rod, path[..^".body".Length] + ".rod", problems);
        NoteColour(member.Body?.Colour, path, problems);
        NoteBush(member.Body?.Bush, member.Body?.Axle, $"{path}.bush", problems);
        if (member is { Body.Guide: not null, Slide: null })
        {
            problems.Add($"{path}.guide", "only what slides has a guide, and this turns", "Remove 'guide'; for a shaft's bearing give 'bush'");
        }

        if (member is { Body.Bush: not null, Pivot: null })
        {
            problems.Add($"{path}.bush", "only what turns runs in bushes, and this slides", "Remove 'bush'; for a slide's bearing give 'guide'");
        }

        if (member.Body is { Guide.Outside: { } outside } && (member.Body.Axle ?? Parts.LeverParts.SlideRod) is var rod && outside <= rod + Parts.Fits.Running)
        {
            problems.Add($"{path}.guide.outside", FormattableString.Invariant($"a guide of {outside} mm has no wall round a rod of {rod} mm"), FormattableString.Invariant($"Give it more than {rod + Parts.Fits.Running} mm"));
        }
    }

    private static void NoteRod(RodSpec? rod, string path, ProblemList problems)
    {
        SolidProblems.NoteMaterial(rod?.Material, $"{path}.material", problems);
        List<Geometry.Point3> run = rod?.Bends is { } bends ? [rod.Pins[0], .. bends, rod.Pins[1]] : [];
        for (var i = 1; i < run.Count; i++)
        {
            if (run[i] == run[i - 1])
            {
                problems.Add(i < run.Count - 1 ? $"{path}.bends.{i}" : $"{path}.bends", "two bends or a bend and a pin are at one point", "Set them apart");
                return;
            }
        }
    }

    private static void NoteBush(BushSpec? bush, double? rod, string path, ProblemList problems)
    {
        SolidProblems.NoteMaterial(bush?.Material, $"{path}.material", problems);
        if (bush?.Outside is { } outside && rod is { } d && outside <= d)
        {
            problems.Add($"{path}.outside", FormattableString.Invariant($"a bush of {outside} mm has no wall round a rod of {d} mm"), FormattableString.Invariant($"Give it more than {d} mm"));
        }
    }

    private static void NoteColour(string? colour, string path, ProblemList problems)
    {
        if (colour is not null && Colours.Read(colour) is null)
        {
            problems.Add($"{path}.colour", $"'{colour}' is no colour", "Write \"#rrggbb\" in quotes: red, green and blue in two hexadecimal digits each, as \"#B0302A\"");
        }
    }

    private static void NoteWasher(WasherSpec? w, string path, ProblemList problems)
    {
        if (w is null)
        {
            return;
        }

        var free = w.Bore is not null || w.Outside is not null;
        if (new[] { w.Size is not null, w.Shim is not null, free }.Count(g => g) != 1)
        {
            problems.Add(path, w.Size is null && w.Shim is null ? "the washer has no size" : "the washer's size is given in more than one way", "Give exactly one of 'size: M4', 'shim: 4' with a thickness, and bore, outside and thickness");
        }
        else if (w.Size is not null && w.Thickness is not null)
        {
            problems.Add($"{path}.thickness", FormattableString.Invariant($"a plain washer {w.Size} is {WasherSize.Plain[w.Size].Thickness} mm thick"), "Remove 'thickness', or give 'shim' or a bore and an outside");
        }
        else if (w.Shim is { } axle && !WasherSize.ShimOutsides.ContainsKey(axle))
        {
            problems.Add($"{path}.shim", FormattableString.Invariant($"no shim rings are made for an axle of {axle} mm"), FormattableString.Invariant($"They are made for {string.Join(", ", WasherSize.ShimOutsides.Keys)} mm; else give bore, outside and thickness"));
        }
        else if (w.Shim is not null && !WasherSize.ShimThicknesses.Contains(w.Thickness ?? 0))
        {
            problems.Add(w.Thickness is null ? path : $"{path}.thickness", w.Thickness is { } t ? FormattableString.Invariant($"no shim rings are made {t} mm thick") : "the shim ring has no thickness", FormattableString.Invariant($"Give a thickness of {string.Join(", ", WasherSize.ShimThicknesses.Select(x => x.ToString(System.Globalization.CultureInfo.InvariantCulture)))} mm"));
        }
        else if (free && (w.Bore is null || w.Outside is null || w.Thickness is null))
        {
            problems.Add(path, "of bore, outside and thickness not all are given", "Give all three");
        }
        else if (free && w.Bore >= w.Outside)
        {
            problems.Add($"{path}.bore", FormattableString.Invariant($"a bore of {w.Bore} mm leaves nothing of a washer of {w.Outside} mm"), "Give a bore smaller than the outside");
        }
    }

    private static void NoteScrew(ScrewSpec? s, string path, ProblemList problems)
    {
        if (s is { Head: "countersunk" } && ScrewHead.Of("countersunk", s.Size)!.Value.Height is var k && s.Length <= k)
        {
            problems.Add($"{path}.length", FormattableString.Invariant($"a countersunk screw {s.Size} of {s.Length} mm is all head, {k} mm high"), FormattableString.Invariant($"Give it more than {k} mm; a countersunk screw is measured over all"));
        }
    }

    private static void NoteSupport(DesignSpec spec, PartSpec part, string path, ProblemList problems)
    {
        if (part.Support is not { } support)
        {
            return;
        }

        NoteBush(support.Bush, null, $"{path}.support.bush", problems);
        if (part.On is not (null or Names.Case))
        {
            problems.Add($"{path}.on", $"a support stands on the case, not on '{part.On}'", "Remove 'on'");
        }

        if (!spec.Members.Contains(support.Of))
        {
            problems.Add($"{path}.support.of", $"there is no member '{support.Of}' to carry", Names.Suggest(support.Of, [.. spec.Members.Names]));
            return;
        }

        var member = spec.Members[support.Of];
        if (member.Pivot is not { } pivot || member.On is not (null or Names.Case))
        {
            problems.Add($"{path}.support.of", member.Pivot is null ? $"'{support.Of}' slides and has no axis" : $"'{support.Of}' sits on '{member.On}', not on the case", "Name a member that turns on the case");
            return;
        }

        if (member.Body is { Bare: true } or { Axle: 0 })
        {
            problems.Add($"{path}.support.of", $"'{support.Of}' has no shaft or axle of its own", "Name the member that has, or remove its 'bare: true' or 'axle: 0'");
        }

        if (spec.Case is null || spec.Case.Open?.Contains(support.From) == true)
        {
            problems.Add($"{path}.support.from", spec.Case is null ? "there is no case to stand on" : $"the case has no board {support.From}: that side is open", spec.Case is null ? "Add a 'case'" : "Name a side that has a board");
        }
        else if (Height(pivot, support, spec.Case) is not > 0)
        {
            problems.Add($"{path}.support.from", $"the axis of '{support.Of}' does not run along the board {support.From} at a distance within the case", "Name a board beside the axis");
        }
    }

    /// <summary>Sine of the slope from which an axis no longer runs along a board.</summary>
    private const double Slope = 1e-6;

    // How far the axis runs from the inner face of the board; null where it runs at a slope to it.
    private static double? Height(PivotSpec pivot, SupportSpec support, CaseSpec box)
    {
        var (a, b, p) = (box.Inside[0], box.Inside[1], pivot.Through);
        var along = pivot.Along.Unit();
        var (slope, height) = support.From switch
        {
            "left" => (along.X, p.X - a.X),
            "right" => (along.X, b.X - p.X),
            "bottom" => (along.Y, p.Y - a.Y),
            "top" => (along.Y, b.Y - p.Y),
            "back" => (along.Z, p.Z - a.Z),
            _ => (along.Z, b.Z - p.Z),
        };
        return Math.Abs(slope) < Slope ? height : null;
    }
}
