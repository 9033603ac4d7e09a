namespace Jackwork.Checks;

/// <summary>How bad a finding is.</summary>
public enum Level
{
    /// <summary>The piece can't work, or not as the design says.</summary>
    Fault,

    /// <summary>It may work, but close to a limit or against good practice.</summary>
    Caution,

    /// <summary>Worth knowing.</summary>
    Note,
}

/// <summary>One verdict of the checks.</summary>
/// <param name="Level">How bad it is.</param>
/// <param name="Check">Which check speaks.</param>
/// <param name="Subject">The member, drive, cam or rule that it speaks of.</param>
/// <param name="From">Crank angle where it begins, deg; null where it does not depend on the turn.</param>
/// <param name="To">Crank angle where it ends, deg.</param>
/// <param name="Measured">What was found.</param>
/// <param name="Limit">What it is held against.</param>
/// <param name="Unit">Unit of both; empty for a plain number.</param>
/// <param name="Message">What is wrong and where, in a sentence.</param>
/// <param name="Advice">What to change.</param>
public sealed record Finding(Level Level, string Check, string Subject, double? From, double? To, double Measured, double Limit, string Unit, string Message, string Advice);

/// <summary>A check of the whole proof. To add one, add a class that implements this; it is found by its type.</summary>
public interface ICheck
{
    /// <summary>The check's name, as findings carry it: lower-case words joined by hyphens.</summary>
    string Name { get; }

    /// <summary>Whether it needs the parts, their clearances or stacks, and not the motion, cams and wheels alone.</summary>
    bool NeedsParts => false;

    /// <summary>What it has to say.</summary>
    IEnumerable<Finding> Run(Proof proof);
}
