using Jackwork.Bench.Sessions;
using Jackwork.Bench.Stage;
using Jackwork.Checks;
using Microsoft.AspNetCore.Components;

namespace Jackwork.Bench.Elements;

/// <summary>A page about one kind of element. To add one, add a component that derives from this; it is found by its type.</summary>
public abstract class ElementPage : ComponentBase
{
    /// <summary>All of them, in order.</summary>
    internal static IReadOnlyList<(Type Type, string Title)> All { get; } =
        [.. typeof(ElementPage).Assembly.GetTypes()
            .Where(t => t is { IsAbstract: false } && t.IsAssignableTo(typeof(ElementPage)))
            .Select(t => (t, Made: (ElementPage)Activator.CreateInstance(t)!))
            .OrderBy(x => x.Made.Order)
            .Select(x => (x.t, x.Made.Title))];

    /// <summary>Its title.</summary>
    public abstract string Title { get; }

    /// <summary>Where it stands among the others.</summary>
    public abstract int Order { get; }

    /// <summary>The session.</summary>
    [Parameter, EditorRequired]
    public DesignSession Session { get; set; } = null!;

    /// <summary>What to show.</summary>
    [Parameter, EditorRequired]
    public Snapshot Now { get; set; } = null!;

    /// <summary>Name of the member that the maker has chosen, here or elsewhere on the page; null for none. It may be one that the design no longer has.</summary>
    [Parameter]
    public string? Chosen { get; set; }

    /// <summary>Chooses a member for the whole page.</summary>
    [Parameter]
    public EventCallback<string?> Choose { get; set; }

    /// <summary>Name of the design's own part that was picked on the stage; null for none.</summary>
    [Parameter]
    public string? Picked { get; set; }

    /// <summary>Turns the stage to a place and marks what is there.</summary>
    [Parameter]
    public EventCallback<FindingPlace> Show { get; set; }

    /// <summary>What was worked out.</summary>
    protected Work Work => Now.Work!;

    /// <summary>Turns the stage to a finding.</summary>
    protected Task Jump(Finding finding) => Show.InvokeAsync(FindingPlace.Of(finding, Now.Solids));
}
