using System.Collections.Concurrent;
using System.Text;
using Jackwork.Bench.Chart;
using Jackwork.Motion;
using Jackwork.Shop.Views;

namespace Jackwork.Bench.Sessions;

/// <summary>The examples on the start page: what each is called, what it shows, and its front view.</summary>
internal sealed class ExamplePictures(BenchOptions options)
{
    /// <summary>Pixels for a mm of the view; the page brings it to size.</summary>
    private const double Scale = 2;

    private readonly ConcurrentDictionary<string, Lazy<string?>> drawn = [];

    /// <summary>An example's front view as SVG, hidden lines left out; null where there is none.</summary>
    public string? Of(string name) => options.Examples.ContainsKey(name) ? drawn.GetOrAdd(name, n => new(() => Draw(n))).Value : null;

    /// <summary>What an example tells of itself: the second sentence of the remark that its file begins with, the first of which names it; else nothing.</summary>
    public string Sentence(string name)
    {
        var lines = Text(name).Split('\n').TakeWhile(l => l.StartsWith('#')).Select(l => l[1..].Trim());
        var sentences = string.Join(' ', lines).Split(". ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return sentences.Length > 1 ? sentences[1].TrimEnd('.') + "." : "";
    }

    /// <summary>An example's title; its name where its text doesn't read.</summary>
    public string Title(string name) => Design.DesignReader.Read(Text(name)).Spec?.Title ?? name;

    private string Text(string name) => Encoding.UTF8.GetString(options.Examples[name][OpenedFolder.FileName]);

    private string? Draw(string name)
    {
        var files = options.Examples[name];
        if (MachineBuilder.Build(Text(name), files.GetValueOrDefault).Machine is not { } machine || Checks.Proof.OfMotion(machine) is not { Assembly.Parts.Count: > 0 } proof)
        {
            return null;
        }

        var view = AssemblyView.Of(proof, ViewSide.Elevation);
        var (min, max) = (view.Bounds.Min, view.Bounds.Max);
        var d = string.Concat(view.Lines.Select(l => Svg.Line([.. l.Points.Select(p => (Scale * (p.X - min.X), Scale * (max.Y - p.Y)))])));
        var (w, h) = (Scale * (max.X - min.X), Scale * (max.Y - min.Y));
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-4 -4 {Svg.N(w + 8)} {Svg.N(h + 8)}\"><path d=\"{d}\" fill=\"none\" stroke=\"#22282b\" stroke-width=\"1.1\" stroke-linejoin=\"round\" stroke-linecap=\"round\"/></svg>";
    }
}
