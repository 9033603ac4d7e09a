using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>A kind of drive that the format knows: under which key it stands, who drives, and how it is made.</summary>
/// <param name="Key">Its key under the member.</param>
/// <param name="DriverKey">The key under it that names the driver.</param>
/// <param name="In">What a member has under the key: the driver's name and the making; null where it has none.</param>
internal sealed record DriveKind(string Key, string DriverKey, Func<MemberSpec, (string Driver, Func<DriveSite, Drive?> Make)?> In)
{
    /// <summary>All kinds, as the format's page lists them.</summary>
    public static readonly IReadOnlyList<DriveKind> All =
    [
        Of("gear", m => m.Gear, "with", g => g.With, GearDriveMaker.Make),
        Of("belt", m => m.Belt, "with", b => b.With, BeltDriveMaker.Make),
        Of("rod", m => m.Rod, "from", r => r.From, RodDriveMaker.Make),
        Of("coupler", m => m.Coupler, "of", c => c.Of, CouplerDriveMaker.Make),
        Of("slot", m => m.Slot, "from", s => s.From, SlotDriveMaker.Make),
        Of("geneva", m => m.Geneva, "from", g => g.From, GenevaDriveMaker.Make),
        Of("eccentric", m => m.Eccentric, "on", e => e.On, EccentricDriveMaker.Make),
        Of("sum", m => m.Sum, "from", s => s.From, SumDriveMaker.Make),
        Of("differential", m => m.Differential, "from", d => d.From, DifferentialDriveMaker.Make),
        Of("ratchet", m => m.Ratchet, "from", r => r.From, RatchetDriveMaker.Make),
        Of("lantern", m => m.Lantern, "with", l => l.With, LanternDriveMaker.Make),
        Of("intermittent", m => m.Intermittent, "from", i => i.From, IntermittentDriveMaker.Make),
        Of("partial-gear", m => m.PartialGear, "from", p => p.From, PartialGearDriveMaker.Make),
        Of("rack", m => m.Rack, "with", r => r.With, RackDriveMaker.Make),
        Of("pin-wheel", m => m.PinWheel, "from", p => p.From, PinWheelDriveMaker.Make),
        Of("universal", m => m.Universal, "from", u => u.From, UniversalDriveMaker.Make),
        Of("cord", m => m.Cord, "from", c => c.From, CordDriveMaker.Make),
        Of("cam", m => m.Cam, "on", c => c.On, CamDriveMaker.Make),
        Of("barrel", m => m.Barrel, "on", b => b.On, BarrelDriveMaker.Make),
    ];

    private static DriveKind Of<T>(string key, Func<MemberSpec, T?> spec, string driverKey, Func<T, string> driver, Func<T, DriveSite, Drive?> make)
        where T : class =>
        new(key, driverKey, m => spec(m) is { } s ? (driver(s), site => make(s, site)) : null);
}
