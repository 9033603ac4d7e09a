namespace Jackwork.Meshes;

/// <summary>The shells of a closed mesh, each all triangles that hang together by edges.</summary>
internal static class MeshShells
{
    /// <summary>Shells that are inside out: of negative volume, and not hollows inside others.</summary>
    public static IEnumerable<MeshProblem> InsideOut(TriangleMesh mesh, MeshEdges edges)
    {
        var shells = Of(mesh, edges);
        var volumes = shells.Select(s => s.Sum(mesh.SixVolumes) / 6).ToList();
        if (volumes.All(v => v <= 0))
        {
            yield return new(MeshFault.InsideOut, FormattableString.Invariant($"the surface is inside out: its volume is {volumes.Sum():0.###} mm^3"), "Turn all faces round (flip the normals) and export it again", shells.Count);
            yield break;
        }

        for (var s = 0; s < shells.Count; s++)
        {
            if (volumes[s] > 0)
            {
                continue;
            }

            var at = mesh.Points[shells[s][0].A];
            var others = shells.Where((_, i) => i != s).SelectMany(x => x).ToArray();
            if (mesh.Winding(at, others) < 0.5)
            {
                yield return new(MeshFault.InsideOut, FormattableString.Invariant($"of {shells.Count} closed shells the one at {MeshCheck.Text(at)} is inside out and no hollow in another: its volume is {volumes[s]:0.###} mm^3"), "Turn its faces round (flip the normals) and export it again", 1, at);
                yield break;
            }
        }
    }

    private static List<List<Triangle>> Of(TriangleMesh mesh, MeshEdges edges)
    {
        // Each triangle points towards the first of its shell.
        var first = Enumerable.Range(0, mesh.Triangles.Length).ToArray();
        int Root(int i)
        {
            while (first[i] != i)
            {
                i = first[i] = first[first[i]];
            }

            return i;
        }

        foreach (var use in edges.All.Values)
        {
            var (a, b) = (Root(use.First), Root(use.Last));
            first[Math.Max(a, b)] = Math.Min(a, b);
        }

        return [.. mesh.Triangles.Select((t, i) => (t, Root: Root(i))).GroupBy(x => x.Root, x => x.t).Select(g => g.ToList())];
    }
}
