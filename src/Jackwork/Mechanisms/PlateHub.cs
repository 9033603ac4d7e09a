namespace Jackwork.Mechanisms;

/// <summary>The hub that holds a plate on its shaft by a grub screw.</summary>
/// <param name="Diameter">Outer diameter, mm.</param>
/// <param name="Length">How far it stands out, mm; 0 for none; null for the usual.</param>
/// <param name="Above">Whether it stands on the plate's face towards the frame's z; else on the other.</param>
/// <param name="Grub">Size of the grub screw; null for the usual.</param>
public readonly record struct PlateHub(double Diameter, double? Length, bool Above, string? Grub);
