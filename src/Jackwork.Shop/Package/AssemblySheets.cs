using Jackwork.Checks;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Views;
using Jackwork.Shop.Writers;

namespace Jackwork.Shop.Package;

/// <summary>The three views of the piece put together, all at one scale.</summary>
public static class AssemblySheets
{
    /// <summary>The files; none for a design without parts.</summary>
    public static IEnumerable<ShopFile> Files(Proof proof) => proof.Assembly.Parts.Count == 0
        ? []
        : ViewSide.All.Select(side => ShopFile.OfText($"views/{side.Name}.svg", () => SvgWriter.Write(Draw(proof, side))));

    /// <summary>One sheet. The elevation names the parts.</summary>
    /// <param name="proof">What was worked out; has parts.</param>
    /// <param name="side">From where the piece is seen.</param>
    /// <param name="crank">Crank angle, rad.</param>
    public static Drawing Draw(Proof proof, ViewSide side, double crank = 0)
    {
        var view = AssemblyView.Of(proof, side, crank);
        return ViewSheet.Draw(view, proof.Machine.Design.Title, ViewSheet.ScaleFor(view.Size), Proof.Deg(crank), side == ViewSide.Elevation);
    }
}
