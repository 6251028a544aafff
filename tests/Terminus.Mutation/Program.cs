using Terminus.Mutation;

// coverage FOLDER                 which test reaches which mutant
// test FOLDER PLACE… [options]    the mutants of these folders or files: --workers N, --sample N, --again STATUS
// worker FOLDER MS [MUTANT]         one process of the above; a mutant named here acts from the first instruction
// report FOLDER [PLACE…]          the shares by folder, and every mutant that no test noticed

if (args is not [string verb, string folder, .. string[] rest])
{
    Console.Error.WriteLine("usage: coverage|test|worker|report FOLDER …");
    return 2;
}

switch (verb)
{
    case "coverage":
        MutantSwitch.Quicken(Path.Combine(folder, "Terminus.dll"));
        Coverage.Measure(folder).Save(folder);
        return 0;
    case "worker":
        Worker.Serve(folder, Number(rest[0]), rest is [_, string mutant] ? Number(mutant) : null);
        return 0;
    case "test":
        await Trial.RunAsync(folder, TrialOptions.Of(rest)).ConfigureAwait(false);
        return 0;
    case "report":
        Summary.Print(folder, rest);
        return 0;
    default:
        Console.Error.WriteLine($"no such verb: {verb}");
        return 2;
}

static int Number(string word) => int.Parse(word, System.Globalization.CultureInfo.InvariantCulture);
