using Jackwork.Design;
using Jackwork.Motion.Drives;

namespace Jackwork.Motion;

/// <summary>Makes the drive of each member.</summary>
internal sealed class DriveBuilder(DesignSpec spec, IReadOnlyList<Member> members, IReadOnlySet<int> unsound, ProblemList problems)
{
    private readonly List<string> names = [.. members.Select(m => m.Name)];

    /// <summary>The drives by member; null, with problems noted, if any can't be made.</summary>
    public IReadOnlyList<Drive>? Build()
    {
        if (!names.Contains(spec.Crank.Turns))
        {
            problems.Add("crank.turns", $"there is no member '{spec.Crank.Turns}' for the crank to turn", Names.Suggest(spec.Crank.Turns, names));
        }

        var drives = new List<Drive?>();
        for (var m = 0; m < members.Count; m++)
        {
            drives.Add(DriveOf(m));
        }

        return drives.TrueForAll(d => d is not null) && problems.IsEmpty ? drives.ConvertAll(d => d!) : null;
    }

    private Drive? DriveOf(int m)
    {
        var path = $"members.{names[m]}";
        var isCrank = spec.Crank.Turns == names[m];
        var given = DriveKind.All.Select(k => (Kind: k, Drive: k.In(spec.Members[names[m]]))).Where(g => g.Drive is not null).ToList();
        List<string> drives = [.. isCrank ? (string[])["the crank"] : [], .. given.Select(g => g.Kind.Key)];
        if (drives.Count != 1)
        {
            var all = DriveKind.All.Select(k => k.Key).ToList();
            problems.Add(path, drives.Count == 0 ? $"'{names[m]}' has no drive: nothing makes it move" : $"'{names[m]}' has {drives.Count} drives: {string.Join(", ", drives)}", drives.Count == 0 ? $"Give it one of {string.Join(", ", all[..^1])} and {all[^1]}, or let the crank turn it" : "Keep exactly one of them");
            return null;
        }

        if (isCrank)
        {
            return Crank(m, path);
        }

        var (kind, drive) = given[0];
        return Driver(drive!.Value.Driver, m, $"{path}.{kind.Key}.{kind.DriverKey}") is { } d ? drive.Value.Make(new(members, d, m, $"{path}.{kind.Key}", i => spec.Members[names[i]], problems)) : null;
    }

    private CrankDrive? Crank(int m, string path)
    {
        if (unsound.Contains(m) || (members[m].Joint.Kind == JointKind.Pivot && members[m].Carrier == Member.Case))
        {
            return new(m);
        }

        problems.Add(path, $"the crank turns '{names[m]}', which is not a pivot on the case", "Let the crank turn a member with 'pivot' that sits on the case");
        return null;
    }

    private int? Driver(string name, int driven, string path)
    {
        var d = names.IndexOf(name);
        if (d < 0)
        {
            problems.Add(path, $"there is no member '{name}' to drive '{names[driven]}'", Names.Suggest(name, [.. names.Where(n => n != names[driven])]));
            return null;
        }

        if (d == driven || Carriers.IsCarriedBy(members, d, driven))
        {
            problems.Add(path, d == driven ? $"'{name}' drives itself" : $"'{name}' drives '{names[driven]}', which carries it", "Name a driver that does not depend on the driven member");
            return null;
        }

        // Of the geometry of a member without a sound joint nothing can be said.
        return unsound.Contains(d) || unsound.Contains(driven) ? null : d;
    }
}
