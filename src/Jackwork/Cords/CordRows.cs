namespace Jackwork.Cords;

/// <summary>What a cord is cut, drilled and turned by, row by row.</summary>
internal static class CordRows
{
    /// <summary>The rows.</summary>
    public static IEnumerable<(string What, double Value, string Unit)> Of(CordWork work)
    {
        var (drive, d) = (work.Drive, work.Diameter);
        yield return ("cord diameter", d, "mm");
        yield return ("cord from end to end as drawn", drive.Length, "mm");
        yield return ("allowance for the knot at each end", CordSizes.Knot(drive.Spec), "mm");
        yield return ("cord to cut", work.CutLength, "mm");
        for (var k = 0; k < drive.Run.Leads.Count; k++)
        {
            var (lead, spec, name) = (drive.Run.Leads[k], drive.Spec.Run[k], $"{work.Called(k)} on {work.Machine.NameOf(drive.Run.Leads[k].Member)}");
            if (lead.Kind == LeadKind.Eye)
            {
                yield return ($"{name}: hole", CordSizes.EyeHole(d), "mm");
                yield return ($"{name}: x as drawn", lead.At.X, "mm");
                yield return ($"{name}: y as drawn", lead.At.Y, "mm");
                yield return ($"{name}: z as drawn", lead.At.Z, "mm");
            }
            else if (lead.Kind == LeadKind.Pulley)
            {
                yield return ($"{name}: outside", 2 * CordSizes.PulleyRim(spec, d), "mm");
                yield return ($"{name}: bottom of the groove", spec.Pulley!.Value, "mm");
                yield return ($"{name}: radius of the groove's bottom", CordSizes.GrooveRadius(d), "mm");
                yield return ($"{name}: width of the groove at the rim", CordSizes.GrooveWidth(d), "mm");
                yield return ($"{name}: thickness", CordSizes.PulleyThickness(spec, d), "mm");
                yield return ($"{name}: pin", spec.Pin ?? CordSizes.UsualPin, "mm");
            }
            else
            {
                yield return ($"{name}: diameter", spec.Drum!.Value, "mm");
                yield return ($"{name}: between the cheeks", work.DrumLength(k), "mm");
                yield return ($"{name}: diameter of the cheeks", 2 * CordSizes.CheekRim(spec, d), "mm");
                yield return ($"{name}: hole for the cord's end in a cheek", CordSizes.EyeHole(d), "mm");
                yield return ($"{name}: least turns wound", work.Range.Wraps[k].Least / (2 * Math.PI), "");
                yield return ($"{name}: most turns wound", work.Range.Wraps[k].Most / (2 * Math.PI), "");
            }
        }
    }
}
