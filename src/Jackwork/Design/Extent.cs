namespace Jackwork.Design;

/// <summary>How a node is written.</summary>
internal enum Form
{
    /// <summary>A word or number without quotes.</summary>
    Plain,

    /// <summary>Text in single or double quotes.</summary>
    Quoted,

    /// <summary>Text on lines of its own after <c>|</c> or <c>&gt;</c>.</summary>
    Literal,

    /// <summary>Keys or hyphens on lines of their own.</summary>
    Block,

    /// <summary>In brackets or braces.</summary>
    Flow,

    /// <summary>One key with its value in a bracketed list, without braces.</summary>
    Pair,

    /// <summary>A <c>*name</c> in place of the node that it names.</summary>
    Alias,
}

/// <summary>Where a node stands in the text: from <paramref name="Start"/> (its anchor, if it has one) up to, not including, <paramref name="End"/>, characters from 0.</summary>
/// <param name="Start">First character.</param>
/// <param name="End">One past the last; a block ends with the last value in it, before comments and line breaks.</param>
/// <param name="Form">How it is written.</param>
internal readonly record struct Extent(int Start, int End, Form Form)
{
    /// <summary>Whether nothing is written there: the value of a key left empty.</summary>
    public bool IsEmpty => Start == End;
}
