namespace Jackwork.Cams;

/// <summary>Where a follower stands on its cam as cut, found by a contact calculation of its own.</summary>
/// <param name="Follower">Index of the follower.</param>
/// <param name="Reach">Travel of the point that touches, mm per rad or mm of the coordinate.</param>
/// <param name="Rests">Its coordinate at every step, rad or mm; NaN where it touches nothing.</param>
/// <param name="Sides">For a positive cam the coordinates at which its first and its other side stop it; null for a cam with one side.</param>
/// <param name="Way">+1 where the coordinate grows from the first side to the other, else -1, at a coordinate.</param>
internal sealed record CutContact(int Follower, double Reach, double[] Rests, (double[] First, double[] Other)? Sides, Func<double, int> Way);
