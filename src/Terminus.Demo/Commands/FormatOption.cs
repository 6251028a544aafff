using System.CommandLine;

namespace Terminus.Demo.Commands;

/// <summary>The option <c>--format text|json</c>.</summary>
internal static class FormatOption
{
    internal static Option<string> TextOrJson()
    {
        var format = new Option<string>("--format") { Description = "How to answer.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        return format;
    }

    internal static bool IsJson(this ParseResult parsed, Option<string> format) => parsed.GetValue(format) == "json";
}
