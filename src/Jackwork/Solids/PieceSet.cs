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
        Box = BoundsIn(Frame.Identity);
        Shell = ConvexPiece.Box(Frame.Translation(Box.Middle - default(Point3)), Box.Most - Box.Least);
    }

    /// <summary>The box round all pieces, along the axes of the part's frame.</summary>
    public Bounds Box { get; }

    /// <summary><see cref="Box"/> as a solid.</summary>
    internal ConvexPiece Shell { get; }

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

        var box = new Bounds(Pieces[order[0]].Ball.Centre, Pieces[order[0]].Ball.Centre);
        foreach (var i in order)
        {
            var c = Pieces[i].Ball.Centre;
            box = box.Around(new(c, c));
        }

        var side = box.Most - box.Least;
        Span<double> along = new double[order.Length];
        for (var i = 0; i < order.Length; i++)
        {
            var c = Pieces[order[i]].Ball.Centre;
            along[i] = side.X >= side.Y && side.X >= side.Z ? c.X : side.Y >= side.Z ? c.Y : c.Z;
        }

        along.Sort(order);
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
