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
    private bool isInputTaken;

    /// <summary>Answers go here, and nothing else does.</summary>
    internal Stream Output { get; } = output;

    /// <summary>Problems and progress go here.</summary>
    internal TextWriter Errors { get; } = errors;

    /// <summary>Whether somebody watches the error stream on a terminal, so that progress is shown.</summary>
    internal bool IsWatched { get; init; }

    internal int Run(IReadOnlyList<string> arguments)
    {
        var root = new RootCommand("Dates small manufactured things from patent evidence. With no command, it dates the demo inventory and explains one piece. "
            + "It returns 0, 1 where the data have problems (what could be done was done), or 2 where the command is wrong.");
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
            foreach (string message in parsed.Errors.Select(e => OneLine(e.Message)).Distinct())
            {
                Errors.WriteLine("terminus-demo: " + message);
            }

            Errors.WriteLine("Say terminus-demo " + (parsed.CommandResult.Command == root ? "" : parsed.CommandResult.Command.Name + " ") + "--help for what is allowed.");
            return ExitCode.Usage;
        }

        return Safely(() => Invoke(parsed));
    }

    // Help goes through a writer of its own, and its reader may go away as well.
    private int Invoke(ParseResult parsed)
    {
        using var writer = new StreamWriter(Output, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        return parsed.Invoke(new InvocationConfiguration { Output = writer, Error = Errors, EnableDefaultExceptionHandler = false });
    }

    /// <summary>Reads a file whole, or standard input for <c>-</c>.</summary>
    internal byte[] ReadAll(string file)
    {
        using var memory = new MemoryStream();
        using FileStream? opened = file == "-" ? null : OpenFile(file);
        (opened ?? TakeInput()).CopyTo(memory);
        return memory.ToArray();
    }

    /// <summary>Opens a file to be read as one goes, or gives standard input for <c>-</c>.</summary>
    internal Stream OpenInput(string file) => file == "-" ? TakeInput() : OpenFile(file);

    /// <summary>Opens a file as text, or standard input for <c>-</c>, to be read as one goes.</summary>
    internal StreamReader OpenText(string file)
        => new(OpenInput(file), new UTF8Encoding(false), detectEncodingFromByteOrderMarks: true, leaveOpen: file == "-");

    /// <summary>The lines of standard input.</summary>
    internal IEnumerable<string> ReadLines()
    {
        using var reader = new StreamReader(TakeInput(), new UTF8Encoding(false), detectEncodingFromByteOrderMarks: true, leaveOpen: true);
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

    /// <summary>Writes a text and a line end into a file, which is replaced, or to the output where none is named.</summary>
    internal void WriteFile(string? file, string text)
    {
        if (file is null)
        {
            WriteLine(text);
        }
        else
        {
            File.WriteAllText(PlaceOf(file), text + "\n");
        }
    }

    /// <summary>The same path, of a file that can be made: its folder is there, and it is no folder itself.</summary>
    internal static string PlaceOf(string file)
        => Directory.Exists(file) ? throw new IOException(file + " is a folder, where a file is wanted.")
            : Path.GetDirectoryName(Path.GetFullPath(file)) is { } folder && !Directory.Exists(folder) ? throw new IOException($"There is no folder for {file}.")
            : file;

    /// <summary>Says each problem, and whether there was any.</summary>
    internal bool Report(IEnumerable<DocumentProblem> problems)
    {
        bool any = false;
        foreach (DocumentProblem problem in problems)
        {
            Errors.WriteLine(problem.ToString());
            any = true;
        }

        return any;
    }

    /// <summary>Writes paragraphs with an empty line between them; nothing where there are none.</summary>
    internal void WriteParagraphs(IEnumerable<string> paragraphs)
    {
        string text = string.Join("\n\n", paragraphs);
        if (text.Length > 0)
        {
            WriteLine(text);
        }
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

    // What was read once is gone, and a second reading would find nothing.
    private Stream TakeInput()
    {
        if (isInputTaken)
        {
            throw new UsageException("Standard input can be read once, and - stands for two files.");
        }

        isInputTaken = true;
        return input;
    }

    // The name stays as it was typed, since that is what can be put right.
    private static FileStream OpenFile(string file)
        => Directory.Exists(file) ? throw new IOException(file + " is a folder, where a file is wanted.")
            : File.Exists(file) ? File.OpenRead(file)
            : throw new IOException($"There is no file {file}.");

    private static string OneLine(string message) => string.Join(' ', message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
