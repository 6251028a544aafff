using Terminus.Fuzz.Targets;

namespace Terminus.Fuzz;

/// <summary>Checks the inputs of files and folders without a fuzzer.</summary>
internal static class CheckRun
{
    /// <summary>Checks every input, prints those that break something, and closes with the counts. The exit code is 1 where one did.</summary>
    internal static int Over(FuzzTarget target, IEnumerable<string> paths)
    {
        (int inputs, int broken) = (0, 0);
        Allocation most = default;
        foreach ((string name, byte[] input) in paths.SelectMany(Inputs))
        {
            inputs++;
            try
            {
                Allocation allocation = target.Check(input);
                most = allocation.Second > most.Second ? allocation : most;
            }
#pragma warning disable CA1031 // Whatever is thrown is what is looked for.
            catch (Exception wrong)
#pragma warning restore CA1031
            {
                broken++;
                Console.WriteLine(name + ": " + wrong);
            }
        }

        Console.WriteLine($"{inputs} inputs, {broken} broken; the most: {most}");
        return broken == 0 ? 0 : 1;
    }

    private static IEnumerable<(string Name, byte[] Input)> Inputs(string path)
        => Directory.Exists(path) ? Directory.EnumerateFiles(path).Order(StringComparer.Ordinal).Select(f => (f, File.ReadAllBytes(f)))
            : path.EndsWith(".txt", StringComparison.Ordinal) ? CorpusFile.Read(path).Select((input, i) => ($"{path}:{i + 1}", input))
            : [(path, File.ReadAllBytes(path))];
}
