using System.CommandLine;

namespace Terminus.Demo.Commands;

/// <summary>The option that names reference files, and the layers they come to.</summary>
internal sealed class LayersOption(string description)
{
    /// <summary>The option, to be added to a command.</summary>
    internal Option<string[]> Option { get; } = new("--reference")
    {
        Description = description,
        HelpName = "FILE",
        AllowMultipleArgumentsPerToken = true,
    };

    /// <summary>
    /// The built-in reference with each file over it, in the order given. Problems go to the error stream; a file that cannot be read is no layer.
    /// </summary>
    internal (ReferenceSet Reference, bool HasProblems) Read(ParseResult parsed, DemoConsole console)
    {
        ReferenceSet reference = ReferenceSet.BuiltIn;
        bool hasProblems = false;
        foreach (string file in parsed.GetValue(Option) ?? [])
        {
            DocumentResult<ReferenceFile> read = ReferenceFile.Read(console.ReadAll(file), file);
            hasProblems |= console.Report(read.Problems);
            reference = read.Value is null ? reference : reference.With(read.Value);
        }

        return (reference, hasProblems);
    }
}
