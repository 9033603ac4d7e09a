using System.Globalization;
using System.Numerics;
using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>The wheels that tie shafts to the crank: how often each turns, and when all are back where they began.</summary>
internal static class Trains
{
    /// <summary>Turns of each member for a turn of the crank, signed; null for members that no train of wheels ties to it.</summary>
    public static IReadOnlyList<Rational?> Turns(IReadOnlyList<Member> members, IReadOnlyList<Drive> drives, int crank)
    {
        var turns = new Rational?[members.Count];
        turns[crank] = Rational.One;
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var r in drives.OfType<Relation>())
            {
                if (turns[r.Driven] is null && AreEven(r) && r.TurnsFrom(turns) is { Numerator.IsZero: false } t)
                {
                    turns[r.Driven] = t;
                    changed = true;
                }
            }
        }

        return turns;

        // Of two drivers together only a fixed ratio makes a shaft: where one stands at times the sum has no turn of its own.
        bool AreEven(Relation r) => r.Drivers.Count == 1 || r.Drivers.All(d => turns[d] is not null && ShaftTurn.IsEven(drives, d));
    }

    // Turns of a member for a turn of the crank where what only swings to and fro counts as none: whole turns bring all back all the same.
    private static Rational Net(IReadOnlyList<Rational?> turns, IReadOnlyList<Drive> drives, int member)
    {
        if (turns[member] is { } known)
        {
            return known;
        }

        if (drives[member] is not Relation r)
        {
            return Rational.Zero;
        }

        var net = new Rational?[turns.Count];
        foreach (var d in r.Drivers)
        {
            net[d] = Net(turns, drives, d);
        }

        return r.TurnsFrom(net) ?? Rational.Zero;
    }

    /// <summary>The least whole number of crank turns that makes every shaft's turns whole, and the steps to solve it at.</summary>
    public static Performance? Whole(IReadOnlyList<Rational?> turns, IReadOnlyList<Drive> drives, IReadOnlyList<Acted> acted, ProblemList problems)
    {
        var whole = Enumerable.Range(0, turns.Count).Select(m => Net(turns, drives, m)).Aggregate(BigInteger.One, (lcm, t) => lcm / BigInteger.GreatestCommonDivisor(lcm, t.Denominator) * t.Denominator);
        var paced = drives.Where(d => d is not RatioDrive).SelectMany(d => d.Drivers).Concat(acted.Select(a => a.Shaft)).Where(s => s != Member.Case).Select(s => turns[s]).OfType<Rational>().ToList();
        var fastest = paced.Count == 0 ? Rational.One : paced.Select(t => t.Abs()).MaxBy(t => t.Value);
        var steps = whole * fastest.Numerator / fastest.Denominator * Performance.StepsPerTurn;
        var most = Performance.Most(turns.Count);
        if (steps <= most && whole <= Performance.MostTurns)
        {
            return new((int)whole, (int)steps);
        }

        problems.Add(
            "members",
            FormattableString.Invariant($"the performance takes {Rounded(whole)} turns of the crank and {Rounded(steps)} steps before every shaft is back where it began; for {turns.Count} members {Performance.MostTurns} turns and {most} steps are the most that is worked out"),
            "Choose tooth counts with common factors, such as 12 to 36, and slots that go with them");
        return null;
    }

    // Digits beyond the first ones of a huge number tell nobody anything.
    private static string Rounded(BigInteger n) => n < MostDigits ? n.ToString(CultureInfo.InvariantCulture) : "more than " + MostDigits.ToString(CultureInfo.InvariantCulture);

    private static readonly BigInteger MostDigits = 1_000_000_000_000;
}
