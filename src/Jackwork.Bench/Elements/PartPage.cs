using Jackwork.Parts;

namespace Jackwork.Bench.Elements;

/// <summary>On which element page a part of the stage is changed.</summary>
internal static class PartPage
{
    /// <summary>Title of the page.</summary>
    public static string TitleOf(Part part) => ElementPage.All.First(p => p.Type == TypeOf(part.Kind)).Title;

    private static Type TypeOf(PartKind kind) => kind switch
    {
        PartKind.Cam => typeof(CamsPage),
        PartKind.Wheel => typeof(WheelsPage),
        PartKind.Board => typeof(PiecePage),
        PartKind.Figure or PartKind.Support or PartKind.Washer or PartKind.Screw => typeof(PartsPage),
        _ => typeof(MembersPage),
    };
}
