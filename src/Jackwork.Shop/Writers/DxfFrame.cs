using Jackwork.Geometry;
using Jackwork.Shop.Drawings;

namespace Jackwork.Shop.Writers;

/// <summary>What a drawing exchange file of version AC1015 holds around its entities: header, tables, blocks and named objects.</summary>
/// <remarks>Structure after the published reference of the format (sections HEADER to OBJECTS, group codes; from memory).</remarks>
internal sealed class DxfFrame(Drawing drawing)
{
    /// <summary>Handle of the block record of model space, which owns every entity.</summary>
    public const int ModelSpace = 0x17;

    private const int PaperSpace = 0x1B;
    private const int ModelLayout = 0x1A;
    private const int PaperLayout = 0x1E;
    private const int RootDictionary = 0xA;
    private const int Groups = 0xC;
    private const int Layouts = 0xD;
    private const int PlotStyles = 0x12;
    private const int NormalPlotStyle = 0x13;

    // The numbered colours of the format for the cutting layers; any other layer is grey.
    private const int White = 7;
    private const int Blue = 5;
    private const int Green = 3;
    private const int Grey = 8;

    /// <summary>The header: version, unit mm, metric, extent of the sheet, first handle not in use.</summary>
    public void WriteHeader(DxfTags tags, int nextHandle)
    {
        var (min, max) = (drawing.Sheet.Min, drawing.Sheet.Max);
        tags.Section("HEADER");
        tags.Tags((9, "$ACADVER"), (1, "AC1015"), (9, "$DWGCODEPAGE"), (3, "ANSI_1252"), (9, "$HANDSEED"));
        tags.Handle(5, nextHandle);
        tags.Tags((9, "$INSUNITS"), (70, 4), (9, "$MEASUREMENT"), (70, 1), (9, "$LUNITS"), (70, 2), (9, "$LUPREC"), (70, 4));
        tags.Tags((9, "$INSBASE"), (10, 0.0), (20, 0.0), (30, 0.0));
        tags.Tags((9, "$EXTMIN"), (10, min.X), (20, min.Y), (30, 0.0), (9, "$EXTMAX"), (10, max.X), (20, max.Y), (30, 0.0));
        tags.Tags((9, "$LIMMIN"), (10, min.X), (20, min.Y), (9, "$LIMMAX"), (10, max.X), (20, max.Y));
        tags.EndSection();
        tags.Section("CLASSES");
        Class(tags, "ACDBDICTIONARYWDFLT", "AcDbDictionaryWithDefault");
        Class(tags, "ACDBPLACEHOLDER", "AcDbPlaceHolder");
        Class(tags, "LAYOUT", "AcDbLayout");
        tags.EndSection();
    }

    /// <summary>The symbol tables: view, line types, layers, text style, dimension style, block records.</summary>
    public void WriteTables(DxfTags tags)
    {
        // Layer 0 belongs to the format; the cutting layers are always there, so that a program can be set up once.
        var layers = new[] { "0", Layers.Cut, Layers.Drill, Layers.Engrave }.Concat(drawing.ByLayer.Select(l => l.Key))
            .Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        tags.Section("TABLES");
        Table(tags, "VPORT", 0x8, ["*Active"], "AcDbViewportTableRecord", (_, _) => WriteView(tags));
        Table(tags, "LTYPE", 0x2, ["ByBlock", "ByLayer", "Continuous"], "AcDbLinetypeTableRecord", (_, _) =>
            tags.Tags((3, ""), (72, 65), (73, 0), (40, 0.0)));
        Table(tags, "LAYER", 0x1, layers, "AcDbLayerTableRecord", (name, _) =>
        {
            tags.Tags((62, ColourNumber(name)), (6, "Continuous"), (370, -3));
            tags.Handle(390, NormalPlotStyle);
        });
        Table(tags, "STYLE", 0x5, ["Standard"], "AcDbTextStyleTableRecord", (_, _) =>
            tags.Tags((40, 0.0), (41, 1.0), (50, 0.0), (71, 0), (42, 2.5), (3, "txt"), (4, "")));
        Table(tags, "VIEW", 0x7, [], "", (_, _) => { });
        Table(tags, "UCS", 0x6, [], "", (_, _) => { });
        Table(tags, "APPID", 0x3, ["ACAD"], "AcDbRegAppTableRecord", (_, _) => { });
        Table(tags, "DIMSTYLE", 0x4, ["Standard"], "AcDbDimStyleTableRecord", (_, _) =>
            tags.Tags((40, 1.0), (41, 2.5), (42, 0.625), (43, 3.75), (44, 1.25), (140, 2.5), (141, 2.5), (147, 0.625)));
        Table(tags, "BLOCK_RECORD", 0x9, ["*Model_Space", "*Paper_Space"], "AcDbBlockTableRecord", (_, i) =>
            tags.Handle(340, i == 0 ? ModelLayout : PaperLayout));
        tags.EndSection();
    }

    /// <summary>The two blocks every file has, both empty here: model space keeps its entities in the next section.</summary>
    public void WriteBlocks(DxfTags tags)
    {
        tags.Section("BLOCKS");
        foreach (var (name, record) in new[] { ("*Model_Space", ModelSpace), ("*Paper_Space", PaperSpace) })
        {
            Open(tags, "BLOCK", record + 1, record);
            tags.Tags((100, "AcDbEntity"), (8, "0"), (100, "AcDbBlockBegin"), (2, name), (70, 0));
            tags.Tags((10, 0.0), (20, 0.0), (30, 0.0), (3, name), (1, ""));
            Open(tags, "ENDBLK", record + 2, record);
            tags.Tags((100, "AcDbEntity"), (8, "0"), (100, "AcDbBlockEnd"));
        }

        tags.EndSection();
    }

    /// <summary>The named objects: dictionaries of groups, layouts and plot styles, and the two layouts.</summary>
    public void WriteObjects(DxfTags tags)
    {
        tags.Section("OBJECTS");
        Dictionary(tags, RootDictionary, 0, ("ACAD_GROUP", Groups), ("ACAD_LAYOUT", Layouts), ("ACAD_PLOTSTYLENAME", PlotStyles));
        Dictionary(tags, Groups, RootDictionary);
        Dictionary(tags, Layouts, RootDictionary, ("Model", ModelLayout), ("Layout1", PaperLayout));
        Open(tags, "ACDBDICTIONARYWDFLT", PlotStyles, RootDictionary);
        tags.Tags((100, "AcDbDictionary"), (281, 1), (3, "Normal"));
        tags.Handle(350, NormalPlotStyle);
        tags.Tag(100, "AcDbDictionaryWithDefault");
        tags.Handle(340, NormalPlotStyle);
        Open(tags, "ACDBPLACEHOLDER", NormalPlotStyle, PlotStyles);
        Layout(tags, "Model", ModelLayout, 0, ModelSpace);
        Layout(tags, "Layout1", PaperLayout, 1, PaperSpace);
        tags.EndSection();
    }

    private static int ColourNumber(string layer) => layer switch
    {
        "0" or Layers.Cut => White,
        Layers.Drill => Blue,
        Layers.Engrave => Green,
        _ => Grey,
    };

    private static void Class(DxfTags tags, string name, string type) => tags.Tags(
        (0, "CLASS"), (1, name), (2, type), (3, "ObjectDBX Classes"), (90, 0), (280, 0), (281, 0));

    private static void Open(DxfTags tags, string type, int handle, int owner)
    {
        tags.Tag(0, type);
        tags.Handle(5, handle);
        tags.Handle(330, owner);
    }

    private static void Table(DxfTags tags, string type, int table, IReadOnlyList<string> names, string kind, Action<string, int> write)
    {
        tags.Tags((0, "TABLE"), (2, type));
        tags.Handle(5, table);
        tags.Tags((330, 0), (100, "AcDbSymbolTable"), (70, names.Count));
        if (type == "DIMSTYLE")
        {
            tags.Tag(100, "AcDbDimStyleTable");
        }

        for (var i = 0; i < names.Count; i++)
        {
            // A dimension style's own handle is group 105; the two block records have fixed handles.
            tags.Tag(0, type);
            tags.Handle(type == "DIMSTYLE" ? 105 : 5, type == "BLOCK_RECORD" ? (i == 0 ? ModelSpace : PaperSpace) : tags.Fresh());
            tags.Handle(330, table);
            tags.Tags((100, "AcDbSymbolTableRecord"), (100, kind), (2, names[i]));
            if (type != "BLOCK_RECORD")
            {
                tags.Tag(70, 0);
            }

            write(names[i], i);
        }

        tags.Tag(0, "ENDTAB");
    }

    // A view of the whole sheet. Height under 40, width over height under 41.
    private void WriteView(DxfTags tags)
    {
        tags.Tags((10, 0.0), (20, 0.0), (11, 1.0), (21, 1.0));
        tags.Point(12, drawing.Sheet.Centre);
        tags.Tags((13, 0.0), (23, 0.0), (14, 10.0), (24, 10.0), (15, 10.0), (25, 10.0), (16, 0.0), (26, 0.0), (36, 1.0));
        tags.Tags((17, 0.0), (27, 0.0), (37, 0.0), (40, drawing.Sheet.Height), (41, drawing.Sheet.Width / drawing.Sheet.Height));
        tags.Tags((42, 50.0), (43, 0.0), (44, 0.0), (50, 0.0), (51, 0.0), (71, 0), (72, 1000), (73, 1), (74, 3), (75, 0), (76, 0), (77, 0), (78, 0));
    }

    private static void Dictionary(DxfTags tags, int handle, int owner, params ReadOnlySpan<(string Name, int Handle)> entries)
    {
        Open(tags, "DICTIONARY", handle, owner);
        tags.Tags((100, "AcDbDictionary"), (281, 1));
        foreach (var (name, entry) in entries)
        {
            tags.Tag(3, name);
            tags.Handle(350, entry);
        }
    }

    private void Layout(DxfTags tags, string name, int handle, int order, int record)
    {
        Open(tags, "LAYOUT", handle, Layouts);
        tags.Tags((100, "AcDbPlotSettings"), (1, ""), (2, "none_device"), (4, ""), (6, ""), (40, 0.0), (41, 0.0), (42, 0.0), (43, 0.0));
        tags.Tags((44, 0.0), (45, 0.0), (46, 0.0), (47, 0.0), (48, 0.0), (49, 0.0), (140, 0.0), (141, 0.0), (142, 1.0), (143, 1.0));
        tags.Tags((70, order == 0 ? 1024 : 0), (72, 1), (73, 0), (74, 5), (7, ""), (75, 16), (147, 1.0), (148, 0.0), (149, 0.0));
        tags.Tags((100, "AcDbLayout"), (1, name), (70, 1), (71, order));
        tags.Point(10, drawing.Sheet.Min);
        tags.Point(11, drawing.Sheet.Max);
        tags.Tags((12, 0.0), (22, 0.0), (32, 0.0));
        tags.Point(14, drawing.Sheet.Min);
        tags.Tag(34, 0.0);
        tags.Point(15, drawing.Sheet.Max);
        tags.Tags((35, 0.0), (146, 0.0), (13, 0.0), (23, 0.0), (33, 0.0), (16, 1.0), (26, 0.0), (36, 0.0), (17, 0.0), (27, 1.0), (37, 0.0), (76, 0));
        tags.Handle(330, record);
    }
}
