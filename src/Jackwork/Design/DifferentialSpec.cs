using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A differential.</summary>
[Section("differential", "A differential or planetary wheels: this member is the arm that carries the planets between two wheels about its own axis, one on `from`, the other on `with`. With teeth z1 and z2 it turns by (z1 a + z2 b)/(z1 + z2) when they turn by a and b: by half the sum where both are alike. Without `with` the second wheel is fixed, and the arm turns more slowly than `from`. The first wheel is fixed on its shaft, which runs through; the arm, with what it turns, and the second wheel run loose on that.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      first:
        pivot: {through: [0, 100, 0], along: x}
        gear: {with: shaft, teeth: [20, 40], module: 2}
      second:
        pivot: {through: [0, 100, 0], along: x}
        gear: {with: shaft, teeth: [12, 48], module: 2, at: [30, 100, 0]}
      mix:
        pivot: {through: [0, 100, 0], along: x}
        differential: {from: first, with: second, teeth: [24, 24], module: 1.5, at: [10, 100, 0]}
    """)]
public sealed record DifferentialSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member, which carries the first wheel.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>The second driving member.</summary>
    [Key("The second driving member, which carries the second wheel; that is fixed to what carries this member if not given.", Refers = Refers.Member)]
    public string? With { get; init; }

    /// <summary>How the planets lie.</summary>
    [Key("How the planets lie: `spur` (if not given), two wheels side by side and pairs of planets in mesh with each other; `ring`, a wheel within a ring with inside teeth, and planets between them; `bevel`, two like bevel wheels face to face, of which only the tooth counts are used.", Words = "spur ring bevel")]
    public string? Form { get; init; }

    /// <summary>Teeth of the two wheels.</summary>
    [Key("Teeth of the wheel on `from` and of that on `with` (a ring's inside teeth).", Required = true, Count = 2, Min = 5, Max = 500)]
    public IReadOnlyList<int> Teeth { get; init; } = [];

    /// <summary>Module, mm.</summary>
    [Key("Module of the teeth; needed but for bevel wheels.", Unit = "mm", Min = 0.2, Max = 20)]
    public double? Module { get; init; }

    /// <summary>Teeth of a planet.</summary>
    [Key("Teeth of each planet; if not given, half the difference for a ring, else as many as the smaller wheel has.", Min = 5, Max = 500)]
    public int? Planet { get; init; }

    /// <summary>Number of planets.</summary>
    [Key("Number of planets evenly round, of pairs of them in the form `spur`; 2 if not given.", Min = 1, Max = 12)]
    public int? Planets { get; init; }

    /// <summary>How much each tooth is thinned, mm.</summary>
    [Key("How much thinner each tooth is cut than the pitch would give, along the reference circle, so that wood runs free; 0.1 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Thinning { get; init; }

    /// <summary>Direction of the first planet.</summary>
    [Key("Direction in which the first planet stands from the axis as drawn; upwards if not given.")]
    public Vec3? PlanetTowards { get; init; }

    /// <summary>A point of the first wheel's plane.</summary>
    [Key("A point of the middle of the first wheel; that of this member's `through` if not given.", Unit = "mm", Place = "middle of the first wheel")]
    public Point3? At { get; init; }

    /// <summary>Side of the arm.</summary>
    [Key("The side of the wheels on which the arm turns, along this member's direction: `ahead` or `behind` (if not given).", Words = "ahead behind")]
    public string? Side { get; init; }

    /// <summary>Thickness of the plates, mm.</summary>
    [Key("Thickness of each wheel and of the arm; 6 if not given. The planets of pairs are as wide as two and the room between.", Unit = "mm", Min = 1.5, Max = 100)]
    public double? Thickness { get; init; }

    /// <summary>Bores, mm.</summary>
    [Key("Bore of the first wheel, then of the arm and the second wheel, which run loose on the same shaft; 6 and 6.2 if not given.", Unit = "mm", Count = 2, Min = 0.5, Max = 200)]
    public IReadOnlyList<double>? Bores { get; init; }

    /// <summary>Diameter of the planets' pins, mm.</summary>
    [Key("Diameter of the pins that the planets run on; 4 if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Pin { get; init; }

    /// <summary>Hub diameter, mm.</summary>
    [Key("Diameter of the first wheel's hub, which stands between the two wheels of the form `spur`; twice its bore if not given.", Unit = "mm", Min = 1, Max = 500)]
    public double? Hub { get; init; }

    /// <summary>Size of the grub screw.</summary>
    [Key("Size of the grub screw in the middle of the hub; M3 if not given.", Words = "M2 M2.5 M3 M4")]
    public string? Grub { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
