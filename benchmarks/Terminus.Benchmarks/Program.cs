using System.Globalization;
using BenchmarkDotNet.Running;
using Terminus.Benchmarks.Combining;
using Terminus.Benchmarks.Consoles;
using Terminus.Benchmarks.Figures;
using Terminus.Benchmarks.Inventories;
using Terminus.Benchmarks.Marks;
using Terminus.Tests.Inventories;

// The benchmarks, or one of the programs beside them, each of which prints figures; benchmarks/run.sh runs them all.
switch (args)
{
    case ["generate", var pieces, var lines, var reference]:
        // A generated inventory and its reference file, for programs that read files.
        using (FileStream file = File.Create(lines))
        {
            InventoryGenerator.Write(InventoryBenchmarks.Seed, Whole(pieces), file);
        }

        File.WriteAllText(reference, GeneratedReference.Json());
        break;
    case ["steps"]:
        StepTimes.Print();
        break;
    case ["accuracy"]:
        Print(Accuracy.Measure());
        break;
    case ["inscriptions"]:
        Print(InscriptionTexts.Agreement());
        break;
    case ["inventory", var lines, var passes]:
        Print(WholeRuns.Measure(lines, Whole(passes)));
        break;
    case ["start", var console, var hello, var folder]:
        Print(ConsoleRuns.StartUp(console, hello, folder));
        break;
    case ["memory", var console, var lines, var reference, var pieces]:
        Print(ConsoleRuns.Memory(console, lines, reference, pieces));
        break;
    case ["page", var folder, var page]:
        PerformancePage.Write(folder, page);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        break;
}

static int Whole(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

static void Print(IEnumerable<Figure> figures)
{
    foreach (Figure figure in figures)
    {
        Console.WriteLine(figure);
    }
}
