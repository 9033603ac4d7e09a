using Jackwork.Solids;

namespace Jackwork.Shop.Views;

/// <summary>From where a view is taken.</summary>
/// <param name="Name">Name of the view.</param>
/// <param name="Seen">From where, in words.</param>
/// <param name="Frame">x to the right on the sheet, y up on the sheet, z to the viewer.</param>
public sealed record ViewSide(string Name, string Seen, Frame Frame)
{
    /// <summary>From the front: x to the right, y up.</summary>
    public static ViewSide Elevation { get; } = new("elevation", "seen from the front", Frame.Identity);

    /// <summary>From above: x to the right, the back at the top of the sheet.</summary>
    public static ViewSide Plan { get; } = new("plan", "seen from above", new(new(1, 0, 0), new(0, 0, -1), new(0, 1, 0), default));

    /// <summary>From the viewer's right: the front at the left of the sheet, y up.</summary>
    public static ViewSide Side { get; } = new("side", "seen from the right", new(new(0, 0, -1), new(0, 1, 0), new(1, 0, 0), default));

    /// <summary>The three views of a piece.</summary>
    public static IReadOnlyList<ViewSide> All { get; } = [Elevation, Plan, Side];
}
