using System.Diagnostics;
using System.Globalization;

namespace Terminus.Mutation;

/// <summary>A worker seen from outside: started when first needed, and again after it has ended.</summary>
internal sealed class WorkerProcess(string folder, double slowest) : IDisposable
{
    private Process? process;

    /// <summary>Tries one mutant; a process that ends without an answer is an outcome too.</summary>
    public Outcome Try(int mutant)
    {
        if (process is null || process.HasExited || !Accepts(mutant))
        {
            Stop();
            process = Start(folder, slowest);
            if (process.StandardOutput.ReadLine() is null)
            {
                throw new InvalidOperationException("the worker did not start");
            }

            Accepts(mutant);
        }

        return process.StandardOutput.ReadLine() is { } line ? Outcome.OfLine(line) : new Outcome(mutant, Outcome.Crashed);
    }

    public static Outcome TryFromStart(string folder, double slowest, int mutant)
    {
        using Process one = Start(folder, slowest, mutant.ToString(CultureInfo.InvariantCulture));
        string? line = one.StandardOutput.ReadLine();
        one.Kill();
        return line is null ? new Outcome(mutant, Outcome.Crashed) : Outcome.OfLine(line);
    }

    /// <summary>Gives the number; false when the process has just ended.</summary>
    private bool Accepts(int mutant)
    {
        try
        {
            process!.StandardInput.WriteLine(mutant);
            process.StandardInput.Flush();
            return true;
        }
        catch (IOException)
        {
            return false;
        }
    }

    /// <summary>The runner lies in the mutated build and starts with the settings of the suite, whose folder the tests take for theirs.</summary>
    private static Process Start(string folder, double slowest, params string[] mutant)
    {
        string tests = Path.Combine(folder, "Terminus.Tests");
        ProcessStartInfo start = new("dotnet")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            ArgumentList =
            {
                "exec", "--runtimeconfig", tests + ".runtimeconfig.json", "--depsfile", tests + ".deps.json",
                Path.Combine(folder, "Terminus.Mutation.dll"), "worker", folder, slowest.ToString(CultureInfo.InvariantCulture),
            },
            // A mutant that fills the memory fails its test instead of the machine.
            Environment = { ["DOTNET_GCHeapHardLimit"] = "0x60000000", ["DOTNET_gcConcurrent"] = "0", ["DOTNET_TieredPGO"] = "0" },
        };
        foreach (string argument in mutant)
        {
            start.ArgumentList.Add(argument);
        }

        Process started = Process.Start(start)!;
        started.ErrorDataReceived += (_, _) => { };
        started.BeginErrorReadLine();
        return started;
    }

    private void Stop()
    {
        if (process is { HasExited: false })
        {
            process.Kill();
        }

        process?.Dispose();
        process = null;
    }

    public void Dispose() => Stop();
}
