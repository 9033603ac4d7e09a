using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes a gear pair of its spec.</summary>
internal static class GearDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static RatioDrive? Make(GearSpec g, DriveSite site)
    {
        if (!site.TwoShafts("toothed wheels"))
        {
            return null;
        }

        var (z1, z2) = (g.Teeth[0], g.Teeth[1]);
        var sameWay = site.AxisCosine is var cos && Math.Abs(cos) > 1 - DriveSite.Parallel * DriveSite.Parallel;
        if (!sameWay)
        {
            if (g is { Bevel: not null, Worm: not null })
            {
                site.Note("worm", "the wheels can't be bevel wheels and a worm pair at once", "Keep 'bevel' where the shafts meet, 'worm' where they pass each other square");
                return null;
            }

            if (Sectors(g).Select(s => s.Key).FirstOrDefault() is { } key)
            {
                site.Note(key, "a sector is cut of spur wheels, and these shafts are not parallel", $"Remove '{key}'");
                return null;
            }

            if (g.Worm is not null)
            {
                return WormDriveMaker.Make(g, site);
            }

            if (g.Module is not null || g.Bevel is not null)
            {
                return BevelDriveMaker.Make(g, site);
            }

            if (g.Sense is null)
            {
                site.Note("", "the shafts are not parallel, so the sense can't be told from the teeth", "Add 'sense: same' or 'sense: opposite', or 'module' for bevel wheels that are made");
                return null;
            }

            return new GearDrive(site.Driver, site.Driven, new Rational(g.Sense == "same" ? z1 : -z1, z2), g);
        }

        if (g.Bevel is not null || g.Worm is not null)
        {
            site.Note(g.Bevel is not null ? "bevel" : "worm", "the shafts are parallel, where wheels are spur wheels", "Remove it, or set the shafts across each other");
            return null;
        }

        if (g.Module is null)
        {
            site.Note("", "wheels on parallel shafts need a module", "Add 'module: 2.5', or what your teeth have");
            return null;
        }

        if (g.Sense is not null)
        {
            site.Note("sense", "on parallel shafts the sense follows from the wheels", "Remove 'sense'; use 'inside: true' for a ring with inside teeth");
            return null;
        }

        if (Math.Min(z1, z2) < 5)
        {
            site.Note("teeth", $"a spur wheel of {Math.Min(z1, z2)} teeth can't be made with involute teeth", "Use 5 teeth or more; 12 or more run well");
            return null;
        }

        if (g.Inside && z1 == z2)
        {
            site.Note("teeth", $"a ring and its pinion both have {z1} teeth", "Give the ring at least 8 teeth more");
            return null;
        }

        if (!AreCut(g, site))
        {
            return null;
        }

        var sign = (g.Inside ? 1 : -1) * Math.Sign(cos);
        return new GearDrive(site.Driver, site.Driven, new Rational(sign * z1, z2), g);
    }

    // Whether the sectors that the design asks for can be told.
    private static bool AreCut(GearSpec g, DriveSite site)
    {
        foreach (var (key, sector) in Sectors(g))
        {
            if (g.Inside)
            {
                site.Note(key, "a ring and its pinion are cut whole; a sector is cut of outside wheels only", $"Remove '{key}', or 'inside: true'");
                return false;
            }

            if (sector.From is { } from && sector.To is { } to && from >= to)
            {
                site.Note($"{key}.from", FormattableString.Invariant($"the teeth shall serve turns from {from}° to {to}°, which leaves none"), "Let 'from' be the lesser of the two");
                return false;
            }
        }

        return true;
    }

    private static IEnumerable<(string Key, SectorSpec Sector)> Sectors(GearSpec g)
    {
        if (g.DriverSector is { } driver)
        {
            yield return ("driver-sector", driver);
        }

        if (g.Sector is { } driven)
        {
            yield return ("sector", driven);
        }
    }
}
