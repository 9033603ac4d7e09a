namespace Jackwork.Motion;

/// <summary>A rigid moving part with one freedom.</summary>
/// <param name="Name">Its name in the design.</param>
/// <param name="Carrier">Index of the member that carries it, or <see cref="Case"/>.</param>
/// <param name="Joint">How it sits on its carrier, as drawn.</param>
public sealed record Member(string Name, int Carrier, Joint Joint)
{
    /// <summary>The index that stands for the fixed frame.</summary>
    public const int Case = -1;

    /// <summary>Unit of the coordinate as shown: <c>deg</c> or <c>mm</c>.</summary>
    public string Unit => Joint.Kind == JointKind.Pivot ? "deg" : "mm";

    /// <summary>What one shown unit is inside: rad for a degree, 1 for a mm.</summary>
    public double UnitSize => Joint.Kind == JointKind.Pivot ? Math.PI / 180 : 1;
}
