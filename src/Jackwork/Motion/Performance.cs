namespace Jackwork.Motion;

/// <summary>The shortest number of crank turns after which everything is where it began, and the steps it is solved at.</summary>
/// <param name="CrankTurns">Whole turns of the crank.</param>
/// <param name="Steps">Equal steps of crank angle over the performance.</param>
public readonly record struct Performance(int CrankTurns, int Steps)
{
    /// <summary>Steps for each turn of the fastest shaft that a cam, a chart, a rod or a slot hangs on.</summary>
    public const int StepsPerTurn = 720;

    /// <summary>Most steps of a performance that is still solved as a whole.</summary>
    public const int MostSteps = 200_000;

    /// <summary>Most turns of the crank of a performance: more nobody turns, and more keeps angles from being exact to a billionth.</summary>
    public const int MostTurns = 100_000;

    /// <summary>Most coordinates that are kept of a performance, members times steps: 24 bytes each, kept twice.</summary>
    private const int MostCoordinates = 6_000_000;

    /// <summary>Most steps of a performance that is still solved as a whole, for so many members.</summary>
    public static int Most(int members) => Math.Min(MostSteps, MostCoordinates / members);

    /// <summary>Crank angle over the whole performance, rad.</summary>
    public double Length => 2 * Math.PI * CrankTurns;

    /// <summary>Crank angle of a step, rad.</summary>
    public double Step => Length / Steps;

    /// <summary>Crank angle at step <paramref name="i"/>, rad; not turned back at the end.</summary>
    public double At(double i) => i * Length / Steps;
}
