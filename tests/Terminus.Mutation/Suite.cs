using System.Diagnostics;
using System.Reflection;
using Xunit;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace Terminus.Mutation;

/// <summary>The tests of the built suite, run one at a time inside this process.</summary>
internal sealed class Suite
{
    /// <summary>What is left out: the tests that look at the source and the build themselves, and the simulations.</summary>
    private static readonly string[] LeftOut =
    [
        "Terminus.Tests.Architecture.", "Terminus.Tests.Fuzzing.", "CoverageTest.", "AcceptanceTest.", "CalibrationTest.", "SimulationTest.", "RegisterSharesTest.",
    ];

    private readonly XunitTestFramework framework = new(new Sink(_ => { }));
    private readonly ITestFrameworkExecutor executor;
    private readonly IAssemblyInfo assembly;
    private readonly Lazy<Memory> memory;

    public Suite(string folder)
    {
        Assembly tests = Assembly.LoadFrom(Path.Combine(folder, "Terminus.Tests.dll"));
        Assembly library = Assembly.LoadFrom(Path.Combine(folder, "Terminus.dll"));
        Switch = new MutantSwitch(library);
        memory = new Lazy<Memory>(() => new Memory(library));
        executor = framework.GetExecutor(tests.GetName());
        assembly = Reflector.Wrap(tests);
    }

    public MutantSwitch Switch { get; }

    /// <summary>The tests by identifier.</summary>
    public Dictionary<string, ITestCase> Discover()
    {
        Dictionary<string, ITestCase> found = [];
        using ManualResetEventSlim done = new();
        framework.GetDiscoverer(assembly).Find(false, new Sink(message =>
        {
            if (message is ITestCaseDiscoveryMessage { TestCase: var test } && !LeftOut.Any(test.DisplayName.Contains))
            {
                found.TryAdd(test.UniqueID, test);
            }
            else if (message is IDiscoveryCompleteMessage)
            {
                done.Set();
            }
        }), new Options());
        done.Wait();
        return found;
    }

    /// <summary>Starts one test, on a thread of its own: xunit runs it on the thread that asks.</summary>
    public Run Start(ITestCase test)
    {
        memory.Value.Forget();
        Run run = new();
        new Thread(() => executor.RunTests([test], new Sink(run.Hear), new Options())) { IsBackground = true }.Start();
        return run;
    }

    /// <summary>One test at work.</summary>
    internal sealed class Run
    {
        private readonly ManualResetEventSlim done = new();
        private volatile bool failed;

        public TimeSpan Cost { get; private set; }

        private readonly TimeSpan started = Cpu;

        private static TimeSpan Cpu => Environment.CpuUsage.TotalTime;

        /// <summary>True when it passed, false when it failed, null when it used up its time.</summary>
        /// <remarks>The limit counts this process's work, so that a busy machine ends no test; a test that waits for ever ends by the clock.</remarks>
        public bool? Wait(TimeSpan limit)
        {
            Stopwatch clock = Stopwatch.StartNew();
            int poll = 1;
            while (!done.Wait(poll))
            {
                poll = Math.Min(poll * 2, 50);
                if (Cpu - started > limit || clock.Elapsed > TimeSpan.FromSeconds(60) + (4 * limit))
                {
                    return null;
                }
            }

            Cost = Cpu - started;
            return !failed;
        }

        internal void Hear(IMessageSinkMessage message)
        {
            failed |= message is ITestFailed or IErrorMessage or ITestCleanupFailure or ITestClassCleanupFailure;
            if (message is ITestAssemblyFinished)
            {
                done.Set();
            }
        }
    }

    private sealed class Sink(Action<IMessageSinkMessage> hear) : LongLivedMarshalByRefObject, IMessageSink
    {
        public bool OnMessage(IMessageSinkMessage message)
        {
            hear(message);
            return true;
        }
    }

    /// <summary>One test at a time on one thread; the rest as xunit has it.</summary>
    private sealed class Options : ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
    {
        private readonly Dictionary<string, object?> values = new()
        {
            ["xunit.execution.DisableParallelization"] = true,
            ["xunit.execution.SynchronousMessageReporting"] = true,
            ["xunit.discovery.SynchronousMessageReporting"] = true,
        };

        public TValue GetValue<TValue>(string name) => values.TryGetValue(name, out object? value) ? (TValue)value! : default!;

        public void SetValue<TValue>(string name, TValue value) => values[name] = value;
    }
}
