using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Shop.Tables;

namespace Jackwork.Shop.Package;

/// <summary>A cam as a table, for marking out by hand or for another program.</summary>
internal static class CamTable
{
    /// <summary>The table as CSV: for each step of the cam's turn where the follower stands and which point of the outline it touches; over a drop, as low as it can be there.</summary>
    /// <remarks>x to the right, y up, seen from the tip of the shaft's axis, the shaft as drawn; polar angles from the timing mark, counter-clockwise.</remarks>
    public static string Write(Proof proof, Cam cam)
    {
        var member = proof.Machine.Members[cam.FollowerMember];
        var samples = cam.Profile.Samples.ToArray();
        var q = proof.Motion.Of(cam.FollowerMember)[..samples.Length].ToArray();
        return new CsvTable(
            CsvColumn.Numbers("shaft", "deg", samples.Select((_, i) => proof.ShaftDeg(proof.At(i), cam.Shaft)), 4),
            CsvColumn.Numbers("follower", member.Unit, q.Select((j, i) => cam.Profile.Held(i, j.Value) / member.UnitSize), 5),
            CsvColumn.Numbers("x", "mm", samples.Select(s => s.Point.X), 4),
            CsvColumn.Numbers("y", "mm", samples.Select(s => s.Point.Y), 4),
            CsvColumn.Numbers("radius", "mm", samples.Select(s => s.Point.FromOrigin.Length), 4),
            CsvColumn.Numbers("angle from mark", "deg", samples.Select(s => FromMark(s.Point.FromOrigin.Angle)), 4),
            CsvColumn.Numbers("pressure angle", "deg", samples.Select(s => Proof.Deg(s.PressureAngle)), 3),
            CsvColumn.Numbers("radius of curvature", "mm", samples.Select(s => s.Radius), 3)).ToString();
    }

    private static double FromMark(double angle)
    {
        var deg = Proof.Deg(angle) - 90;
        return deg - 360 * Math.Floor(deg / 360);
    }
}
