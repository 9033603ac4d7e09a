using Jackwork.Look;

// look pictures JACKWORK EXAMPLES FOLDER: a picture of every page. look measure JACKWORK EXAMPLES: how long the bench takes in a browser.
switch (args)
{
    case ["pictures", var command, var examples, var to]:
        await using (var bench = await OpenBench.Start(command, examples))
        {
            await Pictures.Take(bench, to);
        }

        return 0;
    case ["measure", var command, var examples]:
        foreach (var hasStage in new[] { true, false })
        {
            await using var bench = await OpenBench.Start(command, examples, hasStage);
            await Measure.Run(bench, hasStage);
        }

        return 0;
    default:
        Console.Error.WriteLine("look pictures JACKWORK EXAMPLES FOLDER | look measure JACKWORK EXAMPLES");
        return 2;
}
