using System.Globalization;
using System.Text;
using Jackwork.Geometry;

namespace Jackwork.Shop.Writers;

/// <summary>A drawing exchange file as it is made: lines of group code and value, with fresh handles.</summary>
internal sealed class DxfTags
{
    private readonly StringBuilder text = new();

    /// <summary>The next handle that has not been given out. The lower ones are the fixed ones of <see cref="DxfFrame"/>.</summary>
    public int NextHandle { get; private set; } = 0x100;

    /// <summary>What has been written.</summary>
    public string Text => text.ToString();

    /// <summary>A group with a word.</summary>
    public void Tag(int code, string value) => text.Append(CultureInfo.InvariantCulture, $"{code,3}\n{value}\n");

    /// <summary>A group with a whole number.</summary>
    public void Tag(int code, int value) => Tag(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>A group with a real number, to nine decimals.</summary>
    public void Tag(int code, double value)
    {
        var number = value.ToString("0.0########", CultureInfo.InvariantCulture);
        Tag(code, number == "-0.0" ? "0.0" : number);
    }

    /// <summary>Several groups.</summary>
    public void Tags(params ReadOnlySpan<(int Code, object Value)> groups)
    {
        foreach (var (code, value) in groups)
        {
            if (value is double d)
            {
                Tag(code, d);
            }
            else
            {
                Tag(code, Convert.ToString(value, CultureInfo.InvariantCulture)!);
            }
        }
    }

    /// <summary>A point in the plane: x under <paramref name="code"/>, y ten above it.</summary>
    public void Point(int code, Point2 p)
    {
        Tag(code, p.X);
        Tag(code + 10, p.Y);
    }

    /// <summary>A handle, or a reference to one.</summary>
    public void Handle(int code, int handle) => Tag(code, handle.ToString("X", CultureInfo.InvariantCulture));

    /// <summary>A handle not used before.</summary>
    public int Fresh() => NextHandle++;

    /// <summary>Opens a section.</summary>
    public void Section(string name) => Tags((0, "SECTION"), (2, name));

    /// <summary>Closes a section.</summary>
    public void EndSection() => Tag(0, "ENDSEC");

    /// <summary>Opens an entity of model space.</summary>
    public void Entity(string type, string layer, string kind)
    {
        Tag(0, type);
        Handle(5, Fresh());
        Handle(330, DxfFrame.ModelSpace);
        Tags((100, "AcDbEntity"), (8, layer), (100, kind));
    }
}
