using System.Globalization;
using BenchmarkDotNet.Running;
using Terminus.Benchmarks.Inventories;
using Terminus.Tests.Inventories;

if (args is ["generate", var pieces, var lines, var reference])
{
    // A generated inventory and its reference file, for programs that read files.
    using FileStream file = File.Create(lines);
    InventoryGenerator.Write(20260101, int.Parse(pieces, CultureInfo.InvariantCulture), file);
    File.WriteAllText(reference, GeneratedReference.Json());
}
else if (args is ["steps"])
{
    StepTimes.Print();
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
}
