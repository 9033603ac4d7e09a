using System.Text.Json.Nodes;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Mechanisms;

/// <summary>What the drive or the joint of a member is made of beyond its relation: what is cut, drilled and turned for it, and what is told of it.</summary>
/// <remarks>Shafts, stacks, clearances, the package, the model and the side view read it here; what can be wrong with it is said by checks of its own.</remarks>
/// <param name="machine">The machine.</param>
/// <param name="member">Index of the member whose drive or joint it serves.</param>
public abstract class Mechanism(Machine machine, int member)
{
    /// <summary>The machine.</summary>
    public Machine Machine => machine;

    /// <summary>Index of the member whose drive or joint it serves.</summary>
    public int Member => member;

    /// <summary>Its name.</summary>
    public string Name => machine.NameOf(member);

    /// <summary>The trade's words for it: "Geneva wheel".</summary>
    public abstract string Word { get; }

    /// <summary>The folder of its drawings in the shop package.</summary>
    public abstract string Folder { get; }

    /// <summary>What that folder holds, for the package's first page.</summary>
    public abstract string Contents { get; }

    /// <summary>Why it can't be made, a sentence without a full stop; null where it can. What can't be made has neither parts nor drawings.</summary>
    public virtual string? Impossible => null;

    /// <summary>What is cut flat.</summary>
    public virtual IReadOnlyList<Plate> Plates => [];

    /// <summary>What is turned.</summary>
    public virtual IReadOnlyList<Turned> Turnings => [];

    /// <summary>Sheets to lay on parts and work by.</summary>
    public virtual IReadOnlyList<Template> Templates => [];

    /// <summary>What is cut into cylinders.</summary>
    public virtual IReadOnlyList<Wrap> Wraps => [];

    /// <summary>Sizes that are made or bought without an outline.</summary>
    public virtual IReadOnlyList<SizeTable> Tables => [];

    /// <summary>Lines that a skeleton of the machine shows beside the plates' outlines.</summary>
    public virtual IEnumerable<BodyLine> Lines => [];

    /// <summary>Its parts besides the plates, turned parts and their hubs: pins, rods, cords.</summary>
    protected virtual IEnumerable<Part> Loose => [];

    /// <summary>What is told of it in the result, with names of the keys as they stay.</summary>
    public abstract JsonObject ToJson();

    /// <summary>Its parts. Those of one mechanism are meant to touch each other; its own checks judge how.</summary>
    internal IEnumerable<Part> Parts() => Impossible is not null ? [] : Plates.SelectMany(p => MechanismParts.Of(Machine, p)).Concat(Turnings.SelectMany(t => TurnedParts.Of(Machine, t))).Concat(Loose).Select(p => p with { Serves = new(Member, Word) });
}
