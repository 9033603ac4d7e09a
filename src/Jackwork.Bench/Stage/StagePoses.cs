using System.Runtime.InteropServices;
using Jackwork.Bench.Sessions;
using Jackwork.Parts;
using Jackwork.Shop.Model;

namespace Jackwork.Bench.Stage;

/// <summary>Where every body stands over the performance, at equal steps of the crank: little-endian, first version, frames and bodies as 32-bit integers, then for each frame and body seven floats, place in mm and rotation x, y, z, w.</summary>
/// <remarks>The frames are seen from the case; the last stands one step before the end, which is the first again.</remarks>
internal static class StagePoses
{
    /// <summary>Most degrees of the crank from frame to frame: halfway, a grip 50 mm from its axis is then 0.03 mm off where it is read on the straight line.</summary>
    private const int DegreesAFrame = 4;

    /// <summary>Most frames sent.</summary>
    private const int MostFrames = 3000;

    /// <summary>The case, the members, and the rods and lengths of cord, in the order in which poses come.</summary>
    public static IReadOnlyList<Body> Bodies(Work work)
    {
        var machine = work.Machine;
        return
        [
            Body.Case,
            .. machine.Members.Select((_, i) => new Body(i)),
            .. new BodyFrames(work.Proof.Motion).Floating,
        ];
    }

    /// <summary>The array.</summary>
    public static byte[] Write(Work work)
    {
        var bodies = Bodies(work);
        var frames = new BodyFrames(work.Proof.Motion);
        var count = Math.Min(MostFrames, work.Machine.Performance.CrankTurns * 360 / DegreesAFrame);
        var bytes = new byte[12 + count * bodies.Count * 28];
        MemoryMarshal.Cast<byte, int>(bytes.AsSpan(0, 12))[0] = work.Version;
        MemoryMarshal.Cast<byte, int>(bytes.AsSpan(0, 12))[1] = count;
        MemoryMarshal.Cast<byte, int>(bytes.AsSpan(0, 12))[2] = bodies.Count;
        var floats = MemoryMarshal.Cast<byte, float>(bytes.AsSpan(12));
        var k = 0;
        for (var i = 0; i < count; i++)
        {
            var place = (double)i * frames.Steps / count;
            foreach (var body in bodies)
            {
                var frame = frames.At(body, place);
                var turn = Turn.Of(frame);
                floats[k++] = (float)frame.Origin.X;
                floats[k++] = (float)frame.Origin.Y;
                floats[k++] = (float)frame.Origin.Z;
                floats[k++] = (float)turn.X;
                floats[k++] = (float)turn.Y;
                floats[k++] = (float)turn.Z;
                floats[k++] = (float)turn.W;
            }
        }

        return bytes;
    }
}
