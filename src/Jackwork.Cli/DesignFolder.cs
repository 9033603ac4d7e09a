using Jackwork.Design;
using Jackwork.Meshes;

namespace Jackwork.Cli;

/// <summary>The folder of a design, and the files in it that the design names.</summary>
internal static class DesignFolder
{
    /// <summary>Gives the bytes of a file of the folder by its <see cref="DesignPath"/>; null for none. One that is too long ends in an <see cref="IOException"/> that says so.</summary>
    public static Func<string, byte[]?> Of(string folder) => name =>
    {
        var path = System.IO.Path.Combine(folder, name);
        if (DesignPath.Fault(name) is not null || !File.Exists(path))
        {
            return null;
        }

        // Counted while it is read: the length that a file tells is not that of a pipe or a device.
        using var stream = File.OpenRead(path);
        var bytes = new byte[Math.Min(stream.CanSeek ? stream.Length : 0, MeshLimits.MostBytes) + 1];
        for (var used = 0; ;)
        {
            var read = stream.Read(bytes, used, bytes.Length - used);
            used += read;
            if (read == 0)
            {
                return bytes[..used];
            }

            if (used > MeshLimits.MostBytes)
            {
                throw new IOException(FormattableString.Invariant($"it has more than the {MeshLimits.MostBytes} bytes that are read"));
            }

            if (used == bytes.Length)
            {
                Array.Resize(ref bytes, Math.Min(2 * used + 4096, MeshLimits.MostBytes + 1));
            }
        }
    };
}
