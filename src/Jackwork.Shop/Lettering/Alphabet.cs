using System.Collections.Frozen;

namespace Jackwork.Shop.Lettering;

/// <summary>
/// A single-stroke upright alphabet in the proportions of ISO 3098 lettering, type B, drawn from lines and arcs so that a cutter can follow it.
/// </summary>
/// <remarks>
/// ISO 3098-0:1997, type B (from memory): stroke h/10, small letters 7/10 h, tails 3/10 h, space between letters 2/10 h (half of it where
/// that looks better), between words 6/10 h. The shapes are our own: round letters are half circles joined by straight sides. Figures share one width.
/// </remarks>
internal static class Alphabet
{
    // Clear space beside a letter, tenths of the height: beside an upright, a round, and a slope or an open side.
    private const double Upright = 1;
    private const double Round = 0.8;
    private const double Open = 0.35;

    private static readonly FrozenDictionary<char, Glyph> Known = Draw().ToFrozenDictionary();

    // A space leaves 6/10 between two uprights. A letter we have not drawn is a box.
    private static readonly Glyph Space = new(-Glyph.Pen, 2, 2, []);
    private static readonly Glyph Unknown = Glyph.Parse(Upright, Upright, "M0,0 L5,0 L5,9 L0,9 L0,0");

    /// <summary>Whether the alphabet has a shape for <paramref name="letter"/>.</summary>
    public static bool Has(char letter) => char.IsWhiteSpace(letter) || Known.ContainsKey(letter);

    /// <summary>The shape of <paramref name="letter"/>; a box when there is none.</summary>
    public static Glyph Of(char letter) => char.IsWhiteSpace(letter) ? Space : Known.GetValueOrDefault(letter, Unknown);

    // All figures stand on the same width, so columns of numbers line up.
    private static Glyph Figure(string strokes) => Glyph.Parse(Round, Round, strokes, 5);

    private static Dictionary<char, Glyph> Draw() => new()
    {
        ['A'] = Glyph.Parse(Open, Open, "M0,0 L3.5,9 L7,0 M1.1667,3 L5.8333,3"),
        ['B'] = Glyph.Parse(Upright, Round, "M3.5,5 L0,5 M0,0 L0,9 L3.4,9 T3.4,5 L3.5,5 T3.5,0 L0,0"),
        ['C'] = Glyph.Parse(Round, Open, "M5.82,7.03 D110 T0,6 L0,3 T5.82,1.97"),
        ['D'] = Glyph.Parse(Upright, Round, "M0,0 L0,9 L2.5,9 T6,5.5 L6,3.5 T2.5,0 L0,0"),
        ['E'] = Glyph.Parse(Upright, Open, "M5,9 L0,9 L0,0 L5,0 M0,5 L4,5"),
        ['F'] = Glyph.Parse(Upright, Open, "M5,9 L0,9 L0,0 M0,5 L4,5"),
        ['G'] = Glyph.Parse(Round, Upright, "M5.82,7.03 D110 T0,6 L0,3 T6,3 L6,4.4 L3.6,4.4"),
        ['H'] = Glyph.Parse(Upright, Upright, "M0,0 L0,9 M6,0 L6,9 M0,5 L6,5"),
        ['I'] = Glyph.Parse(Upright, Upright, "M0,0 L0,9"),
        ['J'] = Glyph.Parse(Open, Upright, "M4,9 L4,2 T0.12,1.32"),
        ['K'] = Glyph.Parse(Upright, Open, "M0,0 L0,9 M6,9 L0,3.2 M2,5.1333 L6,0"),
        ['L'] = Glyph.Parse(Upright, Open, "M0,9 L0,0 L5,0"),
        ['M'] = Glyph.Parse(Upright, Upright, "M0,0 L0,9 L3.7,2.5 L7.4,9 L7.4,0"),
        ['N'] = Glyph.Parse(Upright, Upright, "M0,0 L0,9 L6,0 L6,9"),
        ['O'] = Glyph.Parse(Round, Round, "M0,3 L0,6 T6,6 L6,3 T0,3"),
        ['P'] = Glyph.Parse(Upright, Open, "M0,0 L0,9 L3.5,9 T3.5,4 L0,4"),
        ['Q'] = Glyph.Parse(Round, Round, "M0,3 L0,6 T6,6 L6,3 T0,3 M3.8,2.2 L6.2,-0.6"),
        ['R'] = Glyph.Parse(Upright, Open, "M0,0 L0,9 L3.5,9 T3.5,4 L0,4 M3.2,4 L6,0"),
        ['S'] = Glyph.Parse(Round, Round, "M5.3,7.4 D105.4 T3.2,9 L2.25,9 T2.25,4.6 L3.3,4.6 T3.3,0 L2.4,0 T0,1.6"),
        ['T'] = Glyph.Parse(Open, Open, "M0,9 L6,9 M3,9 L3,0"),
        ['U'] = Glyph.Parse(Upright, Upright, "M0,9 L0,3 T6,3 L6,9"),
        ['V'] = Glyph.Parse(Open, Open, "M0,9 L3.5,0 L7,9"),
        ['W'] = Glyph.Parse(Open, Open, "M0,9 L2.5,0 L5,9 L7.5,0 L10,9"),
        ['X'] = Glyph.Parse(Open, Open, "M0,0 L6,9 M0,9 L6,0"),
        ['Y'] = Glyph.Parse(Open, Open, "M0,9 L3.2,4.2 L6.4,9 M3.2,4.2 L3.2,0"),
        ['Z'] = Glyph.Parse(Open, Open, "M0,9 L6,9 L0,0 L6,0"),

        ['a'] = Glyph.Parse(Round, Upright, "M5,6 L5,0 M5,3.5 D90 T0,3.5 L0,2.5 T5,2.5"),
        ['b'] = Glyph.Parse(Upright, Round, "M0,9 L0,0 M0,3.5 D90 T5,3.5 L5,2.5 T0,2.5"),
        ['c'] = Glyph.Parse(Round, Open, "M4.77,4.56 D115 T0,3.5 L0,2.5 T4.77,1.44"),
        ['d'] = Glyph.Parse(Round, Upright, "M5,9 L5,0 M5,3.5 D90 T0,3.5 L0,2.5 T5,2.5"),
        ['e'] = Glyph.Parse(Round, Round, "M0,3 L5,3 L5,3.5 T0,3.5 L0,2.5 T4.665,1.25"),
        ['f'] = Glyph.Parse(Open, Open, "M1.2,0 L1.2,7 T3.2,9 L3.3,9 M0,6 L3,6"),
        ['g'] = Glyph.Parse(Round, Upright, "M5,3.5 D90 T0,3.5 L0,2.5 T5,2.5 M5,6 L5,-0.5 T0.23,-1.56"),
        ['h'] = Glyph.Parse(Upright, Upright, "M0,9 L0,0 M0,3.5 D90 T5,3.5 L5,0"),
        ['i'] = Glyph.Parse(Upright, Upright, "M0,6 L0,0 M0,8.6 L0,8.9"),
        ['j'] = Glyph.Parse(Open, Upright, "M1.6,6 L1.6,-1.4 T0,-3 M1.6,8.6 L1.6,8.9"),
        ['k'] = Glyph.Parse(Upright, Open, "M0,9 L0,0 M4.5,6 L0,2.2 M1.6,3.5511 L4.7,0"),
        ['l'] = Glyph.Parse(Upright, Open, "M0,9 L0,1.5 T1.5,0"),
        ['m'] = Glyph.Parse(Upright, Upright, "M0,6 L0,0 M0,4 D90 T4,4 L4,0 M4,4 D90 T8,4 L8,0"),
        ['n'] = Glyph.Parse(Upright, Upright, "M0,6 L0,0 M0,3.5 D90 T5,3.5 L5,0"),
        ['o'] = Glyph.Parse(Round, Round, "M0,2.5 L0,3.5 T5,3.5 L5,2.5 T0,2.5"),
        ['p'] = Glyph.Parse(Upright, Round, "M0,6 L0,-3 M0,3.5 D90 T5,3.5 L5,2.5 T0,2.5"),
        ['q'] = Glyph.Parse(Round, Upright, "M5,6 L5,-3 M5,3.5 D90 T0,3.5 L0,2.5 T5,2.5"),
        ['r'] = Glyph.Parse(Upright, Open, "M0,6 L0,0 M0,3.5 D90 T2.5,6 L3,6"),
        ['s'] = Glyph.Parse(Round, Round, "M4.2,4.9 D110 T2.6,6 L1.5,6 T1.5,3.05 L2.9,3.05 T2.9,0 L1.8,0 T0,1.1"),
        ['t'] = Glyph.Parse(Open, Open, "M1.2,8.5 L1.2,1.8 T3,0 L3.2,0 M0,6 L3.2,6"),
        ['u'] = Glyph.Parse(Upright, Upright, "M0,6 L0,2.5 T5,2.5 M5,6 L5,0"),
        ['v'] = Glyph.Parse(Open, Open, "M0,6 L2.5,0 L5,6"),
        ['w'] = Glyph.Parse(Open, Open, "M0,6 L1.9,0 L3.8,6 L5.7,0 L7.6,6"),
        ['x'] = Glyph.Parse(Open, Open, "M0,6 L4.8,0 M0,0 L4.8,6"),
        ['y'] = Glyph.Parse(Open, Open, "M0,6 L2.6,0 M5.2,6 L1.3,-3"),
        ['z'] = Glyph.Parse(Open, Open, "M0,6 L4.6,6 L0,0 L4.6,0"),

        ['0'] = Figure("M0,2.5 L0,6.5 T5,6.5 L5,2.5 T0,2.5"),
        ['1'] = Figure("M1,7 L3,9 L3,0"),
        ['2'] = Figure("M0.15,7.36 D70 T5,6.5 T4.356,4.825 L0,0 L5,0"),
        ['3'] = Figure("M0.62,7.68 D70 T2.5,5 L1.7,5 M2.5,5 D0 T0.15,1.645"),
        ['4'] = Figure("M3.7,0 L3.7,9 L0,2.6 L5,2.6"),
        ['5'] = Figure("M4.6,9 L0.4,9 L0.4,5.4 L2.3,5.4 T2.3,0 L1.9,0 T0,1.3"),
        ['6'] = Figure("M4,9 D-157.4 T0,3 L0,2.5 T5,2.5 L5,3 T0,3"),
        ['7'] = Figure("M0,9 L5,9 L1.6,0"),
        ['8'] = Figure("M2.5,5 D0 T2.5,9 T2.5,5 T2.5,0 T2.5,5"),
        ['9'] = Figure("M1,0 D22.6 T5,6 L5,6.5 T0,6.5 L0,6 T5,6"),

        ['.'] = Glyph.Parse(Upright, Upright, "M0,0 L0,0.3"),
        [','] = Glyph.Parse(Upright, Upright, "M0.6,0.3 L0,-1.5"),
        [':'] = Glyph.Parse(Upright, Upright, "M0,0.3 L0,0.6 M0,4.7 L0,5"),
        [';'] = Glyph.Parse(Upright, Upright, "M0.6,0.3 L0,-1.5 M0.6,4.7 L0.6,5"),
        ['!'] = Glyph.Parse(Upright, Upright, "M0,9 L0,3 M0,0 L0,0.3"),
        ['?'] = Glyph.Parse(Open, Open, "M0,6.8 L0,6.7 D90 T4.6,6.7 T3.45,4.6 T2.3,2.9 M2.3,0 L2.3,0.3"),
        ['-'] = Glyph.Parse(Upright, Upright, "M0,3.5 L3,3.5"),
        ['–'] = Glyph.Parse(Upright, Upright, "M0,3.5 L5,3.5"),
        ['+'] = Glyph.Parse(Round, Round, "M0,3.5 L5,3.5 M2.5,1 L2.5,6"),
        ['−'] = Glyph.Parse(Round, Round, "M0,3.5 L5,3.5"),
        ['='] = Glyph.Parse(Round, Round, "M0,2.4 L5,2.4 M0,4.9 L5,4.9"),
        ['<'] = Glyph.Parse(Round, Round, "M5,6.3 L0,3.5 L5,0.7"),
        ['>'] = Glyph.Parse(Round, Round, "M0,6.3 L5,3.5 L0,0.7"),
        ['×'] = Glyph.Parse(Round, Round, "M0,1.4 L4.2,5.6 M0,5.6 L4.2,1.4"),
        ['·'] = Glyph.Parse(Upright, Upright, "M0,3.4 L0,3.7"),
        ['/'] = Glyph.Parse(Open, Open, "M0,-1 L4,10"),
        ['('] = Glyph.Parse(Upright, Open, "M1.8,10.2 D-122 T1.8,-1.2"),
        [')'] = Glyph.Parse(Open, Upright, "M0,10.2 D-58 T0,-1.2"),
        ['\''] = Glyph.Parse(Upright, Upright, "M0,9 L0,7"),
        ['’'] = Glyph.Parse(Upright, Upright, "M0,9 L0,7"),
        ['"'] = Glyph.Parse(Upright, Upright, "M0,9 L0,7 M1.8,9 L1.8,7"),
        ['%'] = Glyph.Parse(Round, Round, "M0,7.2 D90 T3,7.2 T0,7.2 M5,1.8 D90 T8,1.8 T5,1.8 M1.2,0 L6.8,9"),
        ['&'] = Glyph.Parse(Round, Open, "M6.4,0 L1.3,5.9 T4.6,7.2 T3.4,5.2 L1.3,3.9 T2.5,0 T6.2,3.6"),
        ['_'] = Glyph.Parse(Open, Open, "M0,-1.5 L6,-1.5"),
        ['°'] = Glyph.Parse(Open, Round, "M0,7.8 D90 T2.4,7.8 T0,7.8"),
        ['Ø'] = Glyph.Parse(Round, Round, "M0,3 L0,6 T6,6 L6,3 T0,3 M0.2,-0.8 L5.8,9.8"),
    };
}
