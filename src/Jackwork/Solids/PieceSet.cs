using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>The convex pieces of one part, with a tree of balls around them so that far pieces are passed over together.</summary>
/// <remarks>
/// Built once: pieces are split at the median of their centres along the longest side of the box of centres, down to one a leaf.
/// Node 0 holds all. A node's ball holds its children's balls. Immutable.
/// </remarks>
public sealed class PieceSet
{
    private readonly Node[] nodes;

    /// <summary>Takes one or more pieces, all given in the part's frame.</summary>
    public PieceSet(params ReadOnlySpan<ConvexPiece> pieces)
    {
        if (pieces.Length == 0)
        {
            throw new ArgumentException("A part has 0 pieces; allowed: 1 or more.", nameof(pieces));
        }

        Pieces = [.. pieces];
        nodes = new Node[2 * pieces.Length - 1];
        var order = Enumerable.Range(0, pieces.Length).ToArray();
        var used = 1;
        Build(0, order, ref used);
    }

    /// <summary>The pieces, in the order given.</summary>
    public ImmutableArray<ConvexPiece> Pieces { get; }

    /// <summary>A ball that holds the whole part, in its frame.</summary>
    public Ball Ball => nodes[0].Ball;

    /// <summary>The smallest box along the axes outside <paramref name="frame"/> that holds the part carried by it.</summary>
    public Bounds BoundsIn(in Frame frame)
    {
        var all = Pieces[0].BoundsIn(frame);
        foreach (var p in Pieces.AsSpan()[1..])
        {
            all = all.Around(p.BoundsIn(frame));
        }

        return all;
    }

    /// <summary>A node: its ball and either a piece or two children.</summary>
    internal ref readonly Node this[int i] => ref nodes[i];

    private void Build(int at, Span<int> order, ref int used)
    {
        if (order.Length == 1)
        {
            nodes[at] = new(Pieces[order[0]].Ball, order[0], -1);
            return;
        }

        var (least, most) = (new Vec3(1, 1, 1), new Vec3(1, 1, 1));
        (least, most) = (double.PositiveInfinity * least, double.NegativeInfinity * most);
        foreach (var i in order)
        {
            var c = Pieces[i].Ball.Centre;
            least = new(Math.Min(least.X, c.X), Math.Min(least.Y, c.Y), Math.Min(least.Z, c.Z));
            most = new(Math.Max(most.X, c.X), Math.Max(most.Y, c.Y), Math.Max(most.Z, c.Z));
        }

        var side = most - least;
        Func<Point3, double> along = side.X >= side.Y && side.X >= side.Z ? p => p.X : side.Y >= side.Z ? p => p.Y : p => p.Z;
        order.Sort((i, j) => along(Pieces[i].Ball.Centre).CompareTo(along(Pieces[j].Ball.Centre)) is var c && c != 0 ? c : i.CompareTo(j));
        var left = used;
        used += 2;
        Build(left, order[..(order.Length / 2)], ref used);
        Build(left + 1, order[(order.Length / 2)..], ref used);
        nodes[at] = new(nodes[left].Ball.Around(nodes[left + 1].Ball), -1, left);
    }

    /// <summary>A ball with the piece it holds, or with its two children at <paramref name="Left"/> and the next index.</summary>
    internal readonly record struct Node(Ball Ball, int Piece, int Left)
    {
        public bool IsLeaf => Piece >= 0;
    }
}
