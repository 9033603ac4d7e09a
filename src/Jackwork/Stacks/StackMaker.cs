using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Stacks;

/// <summary>Finds the lines of a piece and puts its parts in order along them.</summary>
internal static class StackMaker
{
    /// <summary>How far beyond the end of its rod a board still belongs to a line, mm: a rod that falls short of its board by less was meant to reach it.</summary>
    private const double Beyond = 30;

    /// <summary>Clearance in diameter below which a tube is fixed on its rod, mm; a looser one is a spacer.</summary>
    private const double Tight = 0.06;

    /// <summary>The stacks of a proved design: shafts first, in the order of their parts.</summary>
    public static IReadOnlyList<Stack> Of(Proof proof)
    {
        var machine = proof.Machine;
        var plates = PlateSpec.Of(proof);
        var lines = new List<StackLine>();
        foreach (var rod in proof.Assembly.Parts.Where(p => p.Kind is PartKind.Shaft or PartKind.Axle))
        {
            var member = rod.Bears ?? rod.Body.Member;
            var line = lines.Find(l => l.IsOf(machine, member));
            if (line is null)
            {
                line = new(rod.Kind == PartKind.Shaft ? machine.NameOf(member) : rod.Name, machine.Members[member].Joint, machine.Members[member].Carrier);
                lines.Add(line);
            }

            line.Rods.Add(rod);
        }

        var made = lines.ConvertAll(l => Make(proof, plates, l));
        var reach = new GrubReach(proof);
        return made.ConvertAll(s => s with { Grubs = [.. s.Items.Where(i => i.Grub is not null).Select(i => reach.Of(s, i))] });
    }

    private static Stack Make(Proof proof, Dictionary<string, PlateSpec> plates, StackLine line)
    {
        List<StackItem> cores = [.. line.Rods.Select(r => Rod(line, r)).OrderBy(c => c.From)];
        var (from, to) = (cores.Min(c => c.From), cores.Max(c => c.To));
        var items = new List<StackItem>();
        foreach (var part in proof.Assembly.Parts)
        {
            if (part.Kind is PartKind.Shaft or PartKind.Axle or PartKind.Pin or PartKind.Roller or PartKind.Rod or PartKind.Cord or PartKind.Belt or PartKind.Slide or PartKind.Grub or PartKind.Screw || line.On(part) is not { } box)
            {
                continue;
            }

            var reach = part.Kind == PartKind.Board ? Beyond : 0;
            var core = Nearest(cores, (box.Least.Z + box.Most.Z) / 2);
            if (box.Most.Z > from - reach && box.Least.Z < to + reach && Item(proof, plates, line, part, box, core) is { } item)
            {
                Add(items, item);
            }
        }

        // A lever without an axle of its own sits on the tube that it is fixed to.
        for (var i = 0; i < items.Count; i++)
        {
            if (items[i] is { Role: StackRole.Loose, Part.Kind: PartKind.Lever } lever
                && items.Find(t => t.Part.Kind == PartKind.Figure && t.IsGluedTo(lever) && t.From < lever.Middle && t.To > lever.Middle && t.Bore > lever.Bore) is { } tube)
            {
                items[i] = lever with { Bore = tube.Outside };
            }
        }

        items.Sort((a, b) => a.Middle.CompareTo(b.Middle) is var c && c != 0 ? c : string.CompareOrdinal(a.Name, b.Name));
        return new(line.Name, line.Axis, line.Carrier, cores, items, Runs(items, Middle(proof.Machine, line.Axis)));
    }

    private static StackItem Rod(StackLine line, Part rod)
    {
        var box = line.On(rod)!.Value;
        return new(rod.Name, StackRole.Core, rod, box.Least.Z, box.Most.Z, 0, 2 * box.Most.X);
    }

    private static StackItem Nearest(List<StackItem> cores, double station) =>
        cores.MinBy(c => Math.Max(0, Math.Max(c.From - station, station - c.To)))!;

    // What a part is on the line, or null where it only comes near it.
    private static StackItem? Item(Proof proof, Dictionary<string, PlateSpec> plates, StackLine line, Part part, Bounds box, StackItem core)
    {
        var machine = proof.Machine;
        var (x, y) = (Math.Max(-box.Least.X, box.Most.X), Math.Max(-box.Least.Y, box.Most.Y));
        var widest = 2 * Math.Max(x, y);
        var boss = 2 * Math.Min(Math.Min(-box.Least.X, box.Most.X), Math.Min(-box.Least.Y, box.Most.Y));
        StackItem Made(string name, StackRole role, double bore, double outside) => new(name, role, part, box.Least.Z, box.Most.Z, bore, outside) { Reach = widest };
        if (part.Kind == PartKind.Washer && line.IsRound(box))
        {
            return Made(part.Name, StackRole.Spacer, line.Hole(part, box, boss), boss) with { IsCollar = true };
        }

        if (part.Body.Member == line.Carrier)
        {
            var hole = line.Hole(part, box, boss);
            if (hole >= boss)
            {
                return null;
            }

            var collar = part.Kind == PartKind.Figure && line.IsRound(box);
            var role = collar && hole > core.Outside + Tight ? StackRole.Spacer : StackRole.Stop;
            return Made(part.Name, role, hole > 0 ? hole : core.Outside, boss) with { IsCollar = collar };
        }

        if (part.Body.IsRod || !line.IsOf(machine, part.Body.Member))
        {
            return null;
        }

        var turning = line.Rods.Any(r => r.Body == part.Body);
        switch (part.Kind)
        {
            case PartKind.Cam or PartKind.Wheel or PartKind.Plate or PartKind.Turned when plates.ContainsKey(part.Name):
                return Made(part.Name, StackRole.Fixed, plates[part.Name].Bore, widest);
            case PartKind.Hub:
                // A hub is named after its plate.
                var spec = plates[part.Name[..^" hub".Length]];
                return Made(part.Name, StackRole.Fixed, spec.Bore, widest) with { Grub = spec.Grub };
            case PartKind.Lever:
                return Made(machine.NameOf(part.Body.Member), turning ? StackRole.Fixed : StackRole.Loose, core.Outside, boss);
            default:
                var hole = line.Hole(part, box, boss);
                return hole < boss ? Made(part.Name, turning ? StackRole.Fixed : StackRole.Loose, hole > 0 ? hole : core.Outside, part.Kind == PartKind.Handle ? boss : widest) : null;
        }
    }

    // The bars of one lever in one plane are one thing; a hub learns which plate it belongs to.
    private static void Add(List<StackItem> items, StackItem item)
    {
        if (item.Part.Kind == PartKind.Lever)
        {
            var mine = items.Where(i => i.Part.Kind == PartKind.Lever && i.Part.Body == item.Part.Body).ToList();
            if (mine.Any(i => Math.Abs(i.From - item.From) < Stack.Same))
            {
                return;
            }

            item = mine.Count == 0 ? item : item with { Name = item.Part.Name };
        }

        items.Add(item.Grub is null ? item : item with { Plate = items.Find(i => i.Name + " hub" == item.Name) });
    }

    private static List<StackRun> Runs(List<StackItem> items, double middle)
    {
        var runs = new List<StackRun>();
        foreach (var start in items)
        {
            var bound = IsBound(start);
            if (!bound && items.Any(i => i.Middle < start.Middle && i.Meets(start) && !i.IsGluedTo(start)))
            {
                // It belongs to the run of what it runs against.
                continue;
            }

            var between = new List<StackItem>();
            if (!bound)
            {
                between.Add(start);
            }

            var last = Next(items, start);
            while (last is not null && !IsBound(last))
            {
                between.Add(last);
                last = Next(items, last);
            }

            var first = bound ? start : null;
            if (between.Any(i => i.Role == StackRole.Loose) || (first is not null && last is not null && !first.IsOneWith(last)))
            {
                runs.Add(StackRun.Of(first, between, last, middle));
            }
        }

        return runs;
    }

    private static bool IsBound(StackItem item) => item.Role is StackRole.Fixed or StackRole.Stop;

    // What an item would run against if it were shifted along the axis; what is loose takes all that is glued to it along.
    private static StackItem? Next(List<StackItem> items, StackItem a) =>
        items.Where(b => b.Middle > a.Middle && a.Meets(b) && !(a.Role == StackRole.Loose && a.IsGluedTo(b))).MinBy(b => b.From);

    private static double Middle(Machine machine, Joint axis) =>
        machine.Design.Case is { } c ? Station.Of(axis, c.Inside[0] + 0.5 * (c.Inside[1] - c.Inside[0])) : 0;
}
