using Jackwork.Bench.Chart;
using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Bench.Elements.SideView;

/// <summary>A point that the maker has hold of, with what goes along, as they stood when it was taken.</summary>
/// <param name="gesture">Name of the gesture.</param>
/// <param name="handle">The point.</param>
/// <param name="with">What goes along by the same way.</param>
internal sealed class Held(string gesture, Handle handle, IReadOnlyList<Handle> with)
{
    private readonly bool[] touched = new bool[3];

    /// <summary>Name of the gesture.</summary>
    public string Gesture { get; } = gesture;

    /// <summary>Where the point stood when it was taken.</summary>
    public Handle Start { get; } = handle;

    /// <summary>Where the maker has brought it, mm.</summary>
    public Point3 To { get; private set; } = handle.At.Drawn;

    /// <summary>A text with the point, and what goes along, a way off from where they stood when it was taken. Coordinates that never moved stay as they are written.</summary>
    /// <param name="text">The text; other edits may have been made meanwhile.</param>
    /// <param name="by">The whole way since it was taken, mm.</param>
    /// <returns>The new text, or why it can't be.</returns>
    public (string Text, string? Refusal) Move(string text, Vec3 by)
    {
        To = Start.At.Drawn + by;
        ReadOnlySpan<double> way = [by.X, by.Y, by.Z];
        for (var i = 0; i < 3; i++)
        {
            touched[i] |= way[i] != 0;
            if (!touched[i])
            {
                continue;
            }

            foreach (var h in with.Prepend(Start))
            {
                ReadOnlySpan<double> from = [h.At.Drawn.X, h.At.Drawn.Y, h.At.Drawn.Z];
                var edit = DesignText.Set(text, FormattableString.Invariant($"{h.Path}.{i + 1}"), MoveEdit.Number(from[i] + way[i]));
                if (!edit.IsDone)
                {
                    return (text, $"{h.Label}: {edit.Refusal}");
                }

                text = edit.Text;
            }
        }

        return (text, null);
    }
}
