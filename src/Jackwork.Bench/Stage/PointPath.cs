using Jackwork.Bench.Sessions;
using Jackwork.Parts;

namespace Jackwork.Bench.Stage;

/// <summary>The path that a part's middle runs over the performance, mm, as x, y, z after each other.</summary>
internal static class PointPath
{
    private const int Points = 720;

    /// <summary>The path of a part.</summary>
    public static float[] Of(Work work, Part part)
    {
        var frames = new BodyFrames(work.Proof.Motion);
        var path = new float[3 * Points];
        for (var i = 0; i < Points; i++)
        {
            var p = frames.At(part.Body, (double)i * frames.Steps / Points).Apply(part.Box.Middle);
            (path[3 * i], path[3 * i + 1], path[3 * i + 2]) = ((float)p.X, (float)p.Y, (float)p.Z);
        }

        return path;
    }
}
