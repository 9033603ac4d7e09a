namespace Jackwork.Parts;

/// <summary>A stretch of the performance, in steps: a node of the tree that halves it.</summary>
/// <remarks>At level L &gt;= 0 it is the steps from Index 2^L to (Index + 1) 2^L, cut off at the performance's end; below level 0 it lies within one step.</remarks>
/// <param name="From">Where it begins, steps.</param>
/// <param name="To">Where it ends, steps.</param>
/// <param name="Level">Its level.</param>
/// <param name="Index">Its number within its level, or that of the step that it lies in.</param>
internal readonly record struct Stretch(double From, double To, int Level, int Index)
{
    /// <summary>Its length, steps.</summary>
    public double Length => To - From;

    /// <summary>The stretch at a level of 0 or more.</summary>
    public static Stretch At(int level, int index, int steps) =>
        new(index << level, Math.Min((index + 1) << level, steps), level, index);

    /// <summary>Its two halves; the later one is empty (length 0) where the performance ends within the first.</summary>
    public (Stretch Earlier, Stretch Later) Halves(int steps)
    {
        if (Level > 0)
        {
            var later = 2 * Index + 1;
            return (At(Level - 1, 2 * Index, steps), later << (Level - 1) < steps ? At(Level - 1, later, steps) : new(To, To, Level - 1, later));
        }

        var middle = 0.5 * (From + To);
        return (new(From, middle, Level - 1, Index), new(middle, To, Level - 1, Index));
    }

    /// <summary>Where it is halved.</summary>
    public double Middle(int steps) => Halves(steps).Earlier.To;
}
