using System.ComponentModel;
using Jackwork.Motion;
using Spectre.Console.Cli;

namespace Jackwork.Cli;

/// <summary>Settings of the commands that work on a design.</summary>
internal class DesignSettings : CommandSettings
{
    /// <summary>Name of the design file in its folder.</summary>
    public const string FileName = "design.yaml";

    /// <summary>Folder or file.</summary>
    [CommandArgument(0, "<DESIGN>")]
    [Description("The design: its folder, or its file.")]
    public string Design { get; init; } = "";

    /// <summary>Reads the design and makes its machine; every problem of the file goes into the exception.</summary>
    public Machine Load()
    {
        var file = Directory.Exists(Design) ? System.IO.Path.Combine(Design, FileName) : Design;
        if (!File.Exists(file))
        {
            throw new BadInputException(Directory.Exists(Design)
                ? $"jackwork: the folder '{Design}' holds no {FileName}. Start one with 'jackwork new'."
                : $"jackwork: there is no folder or file '{Design}'. Name the design's folder, or its file.");
        }

        var result = MachineBuilder.Build(Text(file), DesignFolder.Of(System.IO.Path.GetDirectoryName(file)!));
        if (result.Machine is { } machine)
        {
            return machine;
        }

        var lines = result.Problems.Select(p => $"{file}:{p}");
        throw new BadInputException($"{string.Join(Environment.NewLine, lines)}{Environment.NewLine}jackwork: {result.Problems.Count} problem{(result.Problems.Count == 1 ? "" : "s")} in the design file; nothing was worked out.");
    }

    private static string Text(string file)
    {
        var size = new FileInfo(file).Length;
        if (size > 4L * Jackwork.Design.NodeLimits.MaxCharacters)
        {
            throw new BadInputException($"{file}: the file has {size} bytes. At most {Jackwork.Design.NodeLimits.MaxCharacters} characters are read.");
        }

        try
        {
            return new System.Text.UTF8Encoding(false, true).GetString(File.ReadAllBytes(file)).TrimStart('\ufeff');
        }
        catch (System.Text.DecoderFallbackException)
        {
            throw new BadInputException($"{file}: the file is not UTF-8 text. Save it as UTF-8.");
        }
    }
}
