using Jackwork.Shop.Tables;
using Xunit;

namespace Jackwork.Tests.Shop;

public sealed class CsvTableTests
{
    [Fact]
    [Trait("Proof", "published")]
    public void Fields_are_quoted_as_in_the_standard()
    {
        // Y. Shafranovich, RFC 4180, section 2, rules 1, 6 and 7: CRLF ends a record; line breaks, commas and quotes stand in quotes,
        // a quote is doubled. Its example fields are aaa, b CRLF bb, ccc and aaa, b"bb, ccc (from memory).
        var table = new CsvTable(
            CsvColumn.Words("field_name", ["aaa", "aaa"]),
            CsvColumn.Words("second", ["b\r\nbb", "b\"bb"]),
            CsvColumn.Words("third, last", ["ccc", "ccc"]));
        Assert.Equal("field_name,second,\"third, last\"\r\naaa,\"b\r\nbb\",ccc\r\naaa,\"b\"\"bb\",ccc\r\n", table.ToString());
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Another_reader_gets_the_same_cells_back()
    {
        string[] words = ["plain", "", "comma, inside", "quote \" inside", "two\nlines", " spaces ", "Ø × °"];
        double[] numbers = [0, -0.00001, 1.23456, -12, 1e7, double.NaN, 0.5];
        var table = Shapes.WithComma(() => new CsvTable(CsvColumn.Words("what", words), CsvColumn.Numbers("angle", "deg", numbers, 4)).ToString());
        var rows = OutsideReader.Read("import csv, json, sys; print(json.dumps(list(csv.reader(open(sys.argv[1], newline='', encoding='utf-8')))))", table);
        Assert.Equal(["what", "angle [deg]"], rows[0].EnumerateArray().Select(c => c.GetString()));
        Assert.Equal(words, rows.EnumerateArray().Skip(1).Select(r => r[0].GetString()));
        Assert.Equal(["0", "0", "1.2346", "-12", "10000000", "", "0.5"], rows.EnumerateArray().Skip(1).Select(r => r[1].GetString()));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Columns_of_unequal_length_are_refused()
    {
        var e = Assert.Throws<ArgumentException>(() => new CsvTable(CsvColumn.Words("a", ["1", "2"]), CsvColumn.Words("b", ["1"])));
        Assert.Contains("'b' has 1 cells", e.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new CsvTable());
    }
}
