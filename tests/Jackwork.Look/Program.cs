using Jackwork.Look;

// look pictures EXAMPLES FOLDER: a picture of every page. look measure EXAMPLES: how long the bench takes in a browser.
switch (args)
{
    case ["pictures", var examples, var to]:
        await using (var bench = await OpenBench.Start(examples))
        {
            await Pictures.Take(bench, to);
        }

        return 0;
    case ["measure", var examples]:
        await using (var bench = await OpenBench.Start(examples))
        {
            await Measure.Run(bench);
        }

        return 0;
    default:
        Console.Error.WriteLine("look pictures EXAMPLES FOLDER | look measure EXAMPLES");
        return 2;
}
