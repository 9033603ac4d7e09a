using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>Makes the interlocks of a design.</summary>
internal sealed class RuleBuilder(DesignSpec spec, IReadOnlyList<Member> members, IReadOnlyList<Rational?>? turns, ProblemList problems)
{
    /// <summary>Most rules taken: each is looked for over the whole performance.</summary>
    public const int MostRules = 100;

    private readonly List<string> names = [.. members.Select(m => m.Name)];

    /// <summary>The rules that are right; problems noted for the others.</summary>
    public IReadOnlyList<Rule> Build()
    {
        if (spec.Rules is { Count: > MostRules })
        {
            problems.Add("rules", FormattableString.Invariant($"there are {spec.Rules.Count} rules"), FormattableString.Invariant($"At most {MostRules} are worked out"));
            return [];
        }

        var rules = new List<Rule>();
        var i = 0;
        foreach (var r in spec.Rules ?? [])
        {
            var path = $"rules.{++i}";
            var first = Make(r.While, $"{path}.while");
            var second = Make(r.Keep, $"{path}.keep");
            if (first is { } w && second is { } k)
            {
                rules.Add(new(w, k, r.Note, $"while {Text(r.While)}, {Text(r.Keep)}"));
            }
        }

        return rules;
    }

    private Condition? Make(ConditionSpec c, string path)
    {
        var m = names.IndexOf(c.Member);
        if (m < 0)
        {
            problems.Add($"{path}.member", $"there is no member '{c.Member}'", Names.Suggest(c.Member, names));
            return null;
        }

        var given = (c.Above is null ? 0 : 1) + (c.Below is null ? 0 : 1) + (c.Between is null ? 0 : 1);
        if (given != 1)
        {
            problems.Add(path, given == 0 ? "the condition says nothing of where the member is" : "the condition has more than one of above, below and between", "Give exactly one of 'above', 'below' and 'between'");
            return null;
        }

        if (turns is null)
        {
            // Which members go round can't be told while drives are wrong.
            return null;
        }

        var goesRound = turns[m] is not null;
        var unit = members[m].UnitSize;
        if (c.Between is { } band)
        {
            var (low, high) = (band[0] * unit, band[1] * unit);
            if (goesRound)
            {
                var width = high - low;
                width -= 2 * Math.PI * Math.Floor(width / (2 * Math.PI));
                if (width == 0)
                {
                    problems.Add($"{path}.between", FormattableString.Invariant($"the band from {band[0]} to {band[1]} on '{c.Member}' is empty, or the whole turn"), "Give two different angles of the turn");
                    return null;
                }

                return new(m, low, low + width, turns[m]?.Numerator.Sign ?? 1);
            }

            if (low >= high)
            {
                problems.Add($"{path}.between", FormattableString.Invariant($"the band from {band[0]} to {band[1]} is empty"), "Give the smaller bound first");
                return null;
            }

            return new(m, low, high, 0);
        }

        if (goesRound)
        {
            problems.Add(path, $"'{c.Member}' goes round and round, so above and below say nothing", "Use 'between: [from, to]' in degrees of its turn");
            return null;
        }

        return new(m, c.Above * unit ?? double.NegativeInfinity, c.Below * unit ?? double.PositiveInfinity, 0);
    }

    private string Text(ConditionSpec c)
    {
        var unit = names.IndexOf(c.Member) is var m && m >= 0 ? members[m].Unit : "";
        return c switch
        {
            { Above: { } a } => FormattableString.Invariant($"{c.Member} is above {a} {unit}"),
            { Below: { } b } => FormattableString.Invariant($"{c.Member} is below {b} {unit}"),
            { Between: { Count: 2 } n } => FormattableString.Invariant($"{c.Member} is between {n[0]} and {n[1]} {unit}"),
            _ => c.Member,
        };
    }
}
