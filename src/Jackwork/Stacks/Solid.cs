using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Stacks;

/// <summary>A part with its pieces gathered for measuring, so that it is done once for all lines.</summary>
internal readonly record struct Solid(Part Part, PieceSet Set);
