using System.Collections.Immutable;
using System.Globalization;
using static System.FormattableString;

namespace Jackwork.Shop.Tables;

/// <summary>A table written as comma-separated values after RFC 4180: a header record, records ended by CR LF, quotes only where needed.</summary>
public sealed class CsvTable
{
    private readonly ImmutableArray<CsvColumn> columns;

    /// <summary>A table of at least one column, all of the same length.</summary>
    public CsvTable(params ImmutableArray<CsvColumn> columns)
    {
        if (columns.IsEmpty)
        {
            throw new ArgumentException("A table needs at least 1 column; it was given 0.", nameof(columns));
        }

        foreach (var c in columns)
        {
            if (c.Cells.Length != columns[0].Cells.Length)
            {
                throw new ArgumentException(Invariant($"Column '{c.Header}' has {c.Cells.Length} cells; the first column has {columns[0].Cells.Length}, and all must have as many."), nameof(columns));
            }
        }

        this.columns = columns;
    }

    /// <summary>Writes the header and all records.</summary>
    public void Write(TextWriter to)
    {
        WriteRecord(to, columns.Select(c => c.Header));
        for (var row = 0; row < columns[0].Cells.Length; row++)
        {
            WriteRecord(to, columns.Select(c => c.Cells[row]));
        }
    }

    /// <summary>The whole file as text.</summary>
    public override string ToString()
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        Write(text);
        return text.ToString();
    }

    private static void WriteRecord(TextWriter to, IEnumerable<string> fields)
    {
        to.Write(string.Join(',', fields.Select(Quoted)));
        to.Write("\r\n");
    }

    // RFC 4180, section 2, rules 6 and 7: a field with a comma, a quote or a line break is quoted, its quotes doubled.
    private static string Quoted(string field) =>
        field.AsSpan().ContainsAny(",\"\r\n") ? $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : field;
}
