namespace Jackwork.Shop.Package;

/// <summary>One file of a shop package, not yet made.</summary>
/// <param name="Path">Where it goes in the package, with forward slashes.</param>
/// <param name="Make">Makes its bytes.</param>
public sealed record ShopFile(string Path, Func<byte[]> Make)
{
    /// <summary>A text file, UTF-8 without a mark.</summary>
    public static ShopFile OfText(string path, Func<string> make) => new(path, () => new System.Text.UTF8Encoding(false).GetBytes(make()));
}
