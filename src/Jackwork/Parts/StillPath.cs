using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The path of what doesn't move.</summary>
internal sealed class StillPath : BodyPath
{
    public override bool IsStill => true;

    public override double Reach(in Ball ball) => 0;

    public override Frame At(double place) => Frame.Identity;

    protected override (double Shift, double Turn) Departure(int from, int middle, int to, double u) => default;
}
