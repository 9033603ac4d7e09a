using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cords;

/// <summary>A straight piece of a cord between two leads, as it stands, seen from the case.</summary>
/// <param name="From">Middle of the lead that it comes from, mm.</param>
/// <param name="To">Middle of the lead that it goes to, mm.</param>
/// <param name="Length">Its length, mm.</param>
/// <param name="Angle">Its direction in the plane of the cord, rad; 0 where the cord runs in space.</param>
/// <param name="Along">Its unit direction.</param>
/// <param name="Begins">Where it leaves the lead that it comes from, mm.</param>
/// <param name="Ends">Where it meets the lead that it goes to, mm.</param>
public readonly record struct CordStrand(Jet3 From, Jet3 To, Jet Length, Jet Angle, Vec3 Along, Point3 Begins, Point3 Ends);
