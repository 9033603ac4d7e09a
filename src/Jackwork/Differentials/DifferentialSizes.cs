namespace Jackwork.Differentials;

/// <summary>The planets of a differential of spur wheels: their teeth, their number and where they stand. Lengths mm, angles rad.</summary>
/// <remarks>
/// <para>Module m, wheels z1, z2, planets z, n of them (in the spur form n pairs), evenly round.</para>
/// <para>Ring: z2 - z1 = 2 z, the planets on the radius m (z1 + z)/2. Spur: the first planet of a pair meshes with the first wheel on the radius
/// r1 = m (z1 + z)/2, the other with the second on r2 = m (z2 + z)/2, and with each other: the angle between them as seen from the axis is G,
/// cos G = (r1^2 + r2^2 - (m z)^2)/(2 r1 r2).</para>
/// <para>They go in evenly round where (z1 + z2)/n is whole: turning the arm by 1/n of a turn, the first wheel held, moves the second on by (z1 + z2)/n of its teeth.</para>
/// <para>Neighbouring planets of the ring form clear each other where m (z1 + z) sin(pi/n) &gt; m (z + 2).</para>
/// <para>J. E. Shigley, Mechanical Engineering Design, planetary trains; Machinery's Handbook, "Epicyclic Gearing" (both from memory).</para>
/// </remarks>
/// <param name="Law">The two wheels.</param>
/// <param name="Module">m, mm.</param>
/// <param name="Planet">z.</param>
/// <param name="Count">n.</param>
public sealed record DifferentialSizes(DifferentialLaw Law, double Module, int Planet, int Count)
{
    /// <summary>Number of planets, or of pairs of them, unless given.</summary>
    public const int UsualCount = 2;

    /// <summary>Teeth of a planet that fits: half the difference for a ring, rounded down where that is odd; as many as the smaller wheel has for pairs.</summary>
    public static int UsualPlanet(DifferentialLaw law) => law.Form == DifferentialForm.Ring ? (law.Second - law.First) / 2 : Math.Min(law.First, law.Second);

    /// <summary>Radius on which the planets in mesh with the first wheel stand.</summary>
    public double FirstRadius => 0.5 * Module * (Law.First + Planet);

    /// <summary>Radius on which the planets in mesh with the second wheel stand: the same one for a ring.</summary>
    public double SecondRadius => Law.Form == DifferentialForm.Ring ? 0.5 * Module * (Law.Second - Planet) : 0.5 * Module * (Law.Second + Planet);

    /// <summary>G: the angle between the two planets of a pair, seen from the axis; 0 for a ring, whose planets mesh with both.</summary>
    public double Between => Law.Form == DifferentialForm.Ring
        ? 0
        : Math.Acos((FirstRadius * FirstRadius + SecondRadius * SecondRadius - Module * Module * Planet * Planet) / (2 * FirstRadius * SecondRadius));

    /// <summary>How far the planets' wheels miss meshing with both wheels, mm: a ring's, where the difference of its teeth and the sun's is odd or the planet is not half of it.</summary>
    public double Misfit => Law.Form == DifferentialForm.Ring ? SecondRadius - FirstRadius : 0;

    /// <summary>Whether planets evenly round can all be put in at once.</summary>
    public bool GoesTogether => (Law.First + Law.Second) % Count == 0;

    /// <summary>Where the planets stand, the middle of each as polar angle and radius, and whether it meshes with the first wheel; the first one on the angle 0.</summary>
    public IEnumerable<(double Angle, double Radius, bool IsFirst)> Planets()
    {
        for (var i = 0; i < Count; i++)
        {
            var at = Math.Tau * i / Count;
            yield return (at, FirstRadius, true);
            if (Law.Form == DifferentialForm.Spur)
            {
                yield return (at + Between, SecondRadius, false);
            }
        }
    }

    /// <summary>Least room between the tip circles of two planets that must not touch, mm; infinite for one planet, or one pair.</summary>
    public double Room
    {
        get
        {
            var all = Planets().ToList();
            var tips = Module * (Planet + 2);
            var room = double.PositiveInfinity;
            for (var i = 0; i < all.Count; i++)
            {
                for (var j = i + 1; j < all.Count; j++)
                {
                    var isPair = Law.Form == DifferentialForm.Spur && i % 2 == 0 && j == i + 1;
                    if (!isPair)
                    {
                        var (a, b) = (all[i], all[j]);
                        var apart = Math.Sqrt(a.Radius * a.Radius + b.Radius * b.Radius - 2 * a.Radius * b.Radius * Math.Cos(a.Angle - b.Angle));
                        room = Math.Min(room, apart - tips);
                    }
                }
            }

            return room;
        }
    }
}
