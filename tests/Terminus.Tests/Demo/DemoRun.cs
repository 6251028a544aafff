using System.Text;
using System.Text.Json;
using Terminus.Demo;

namespace Terminus.Tests.Demo;

/// <summary>One run of the console in this process: what it returned, answered and complained of.</summary>
internal sealed record DemoRun(int Code, string Output, string Errors)
{
    internal JsonElement Json => JsonDocument.Parse(Output).RootElement;

    internal static DemoRun Of(string input, params string[] arguments)
    {
        using var stdin = new MemoryStream(Encoding.UTF8.GetBytes(input));
        using var stdout = new MemoryStream();
        using var stderr = new StringWriter();
        int code = new DemoConsole(stdin, stdout, stderr).Run(arguments);
        return new DemoRun(code, Encoding.UTF8.GetString(stdout.ToArray()), stderr.ToString());
    }

    /// <summary>Runs with a file that is gone afterwards; the argument <c>{file}</c> stands for its path.</summary>
    internal static DemoRun WithFile(string content, string input, params string[] arguments)
    {
        string path = Path.Combine(Path.GetTempPath(), "terminus-" + Guid.NewGuid().ToString("N"));
        File.WriteAllText(path, content);
        try
        {
            return Of(input, [.. arguments.Select(a => a == "{file}" ? path : a)]);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
