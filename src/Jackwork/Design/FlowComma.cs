namespace Jackwork.Design;

/// <summary>The commas between entries in brackets.</summary>
internal static class FlowComma
{
    /// <summary>The comma that follows an entry which ends at <paramref name="at"/>, past spaces, line breaks and comments; -1 where a bracket closes first.</summary>
    public static int After(DesignSource source, int at)
    {
        for (var i = at; i < source.Text.Length; i++)
        {
            if (source.Text[i] == ',')
            {
                return i;
            }

            if (source.Text[i] == '#')
            {
                i = source.Lines.End(i);
            }
            else if (!char.IsWhiteSpace(source.Text[i]))
            {
                break;
            }
        }

        return -1;
    }
}
