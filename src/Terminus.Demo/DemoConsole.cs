using System.CommandLine;
using System.CommandLine.Help;
using System.Text;
using Terminus.Demo.Commands;

namespace Terminus.Demo;

/// <summary>
/// The console: parses the command line and hands on to a command. It knows three streams and nothing of the process, so that tests run
/// it as a person does.
/// </summary>
internal sealed class DemoConsole(Stream input, Stream output, TextWriter errors)
{
    /// <summary>Answers go here, and nothing else does.</summary>
    internal Stream Output { get; } = output;

    /// <summary>Problems and progress go here.</summary>
    internal TextWriter Errors { get; } = errors;

    /// <summary>Whether somebody watches the error stream on a terminal, so that progress is shown.</summary>
    internal bool IsWatched { get; init; }

    internal int Run(IReadOnlyList<string> arguments)
    {
        var root = new RootCommand("Dates small manufactured things from patent evidence. With no command, it dates the demo inventory and explains one piece.");
        root.SetAction(_ => Safely(() => DemoCommand.Run(this)));
        root.Add(DateCommand.Create(this));
        root.Add(InventoryCommand.Create(this));
        root.Add(EdtfCommand.Create(this));
        root.Add(ReadCommand.Create(this));
        root.Add(NumberCommand.Create(this));
        root.Add(NextCommand.Create(this));
        root.Add(SightingsCommand.Create(this));
        root.Add(CheckCommand.Create(this));
        root.Add(ChangesCommand.Create(this));

        ParseResult parsed = root.Parse(arguments);
        if (parsed.Errors.Count > 0 && parsed.Action is not HelpAction)
        {
            foreach (string message in parsed.Errors.Select(e => e.Message).Distinct())
            {
                Errors.WriteLine("terminus-demo: " + message);
            }

            Errors.WriteLine("Say terminus-demo " + (parsed.CommandResult.Command == root ? "" : parsed.CommandResult.Command.Name + " ") + "--help for what is allowed.");
            return ExitCode.Usage;
        }

        using var writer = new StreamWriter(Output, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        return parsed.Invoke(new InvocationConfiguration { Output = writer, Error = Errors, EnableDefaultExceptionHandler = false });
    }

    /// <summary>Reads a file whole, or standard input for <c>-</c>.</summary>
    internal byte[] ReadAll(string file)
    {
        if (file != "-")
        {
            return File.ReadAllBytes(file);
        }

        using var memory = new MemoryStream();
        input.CopyTo(memory);
        return memory.ToArray();
    }

    /// <summary>Opens a file to be read as one goes, or gives standard input for <c>-</c>.</summary>
    internal Stream OpenInput(string file) => file == "-" ? input : File.OpenRead(file);

    /// <summary>Opens a file as text, or standard input for <c>-</c>, to be read as one goes.</summary>
    internal StreamReader OpenText(string file)
        => new(file == "-" ? input : File.OpenRead(file), new UTF8Encoding(false), detectEncodingFromByteOrderMarks: true, leaveOpen: file == "-");

    /// <summary>The lines of standard input.</summary>
    internal IEnumerable<string> ReadLines()
    {
        using var reader = new StreamReader(input, new UTF8Encoding(false), detectEncodingFromByteOrderMarks: true, leaveOpen: true);
        while (reader.ReadLine() is { } line)
        {
            yield return line;
        }
    }

    /// <summary>Writes a line of text as UTF-8.</summary>
    internal void WriteLine(string text)
    {
        Output.Write(Encoding.UTF8.GetBytes(text));
        Output.WriteByte((byte)'\n');
    }

    /// <summary>Runs a command; a file that cannot be read or written is a data problem with its name.</summary>
    internal int Safely(Func<int> run) => SafelyAsync(() => Task.FromResult(run())).GetAwaiter().GetResult();

    /// <summary>Runs a command that takes its time, and may be interrupted.</summary>
    internal async Task<int> SafelyAsync(Func<Task<int>> run)
    {
        try
        {
            int code = await run();
            Output.Flush();
            return code;
        }
        catch (OperationCanceledException)
        {
            Errors.WriteLine("terminus-demo: interrupted; the answers so far are whole lines.");
            return ExitCode.Interrupted;
        }
        catch (UsageException wrong)
        {
            Errors.WriteLine("terminus-demo: " + wrong.Message);
            return ExitCode.Usage;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            Errors.WriteLine("terminus-demo: " + failure.Message);
            return ExitCode.DataProblems;
        }
    }
}
