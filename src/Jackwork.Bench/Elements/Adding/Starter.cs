using Jackwork.Design;

namespace Jackwork.Bench.Elements.Adding;

/// <summary>How a member of one kind of drive is begun: laid out by plain rules where its driver is and where there is room.</summary>
internal abstract class Starter
{
    /// <summary>The drive's key in the format, or that of a kind of it.</summary>
    public abstract string Key { get; }

    /// <summary>What moves the member, with its article.</summary>
    public abstract string Words { get; }

    /// <summary>How the driver stands to it: from or on.</summary>
    public virtual string DriverWord => "from";

    /// <summary>Whether the driver must be a shaft that wheels tie to the crank.</summary>
    public virtual bool NeedsShaft => false;

    /// <summary>Whether that shaft must turn evenly, and not stand still at times.</summary>
    public virtual bool NeedsEvenShaft => false;

    /// <summary>Whether the member can only turn.</summary>
    public virtual bool OnlyTurns => false;

    /// <summary>Whether the member can only slide.</summary>
    public virtual bool OnlySlides => false;

    /// <summary>Why such a member can't be begun there, beside the above; null where it can.</summary>
    /// <param name="site">Where.</param>
    /// <param name="slides">Whether it shall slide.</param>
    public virtual string? Refusal(StartSite site, bool slides) => null;

    /// <summary>The member's value in the design.</summary>
    /// <param name="site">Where.</param>
    /// <param name="slides">Whether it shall slide instead of turning.</param>
    public abstract string Text(StartSite site, bool slides);

    /// <summary>What is added to the design besides the member.</summary>
    /// <param name="added">The design with the member.</param>
    /// <param name="name">Its name.</param>
    /// <param name="site">Where.</param>
    /// <param name="slides">Whether it slides.</param>
    public virtual TextEdit Finish(TextEdit added, string name, StartSite site, bool slides) => added;
}
