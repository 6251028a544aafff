using System.Text;
using System.Text.Json;

namespace Terminus;

/// <content>Where the reader stands, and what is wrong there.</content>
internal ref partial struct DocumentReader
{
    private const int LongestShown = 40;

    /// <summary>True when something was reported so far.</summary>
    internal readonly bool HasProblems => problems is not null;

    /// <summary>The JSON path of the value the reader stands on, or of the object or list it has just finished.</summary>
    internal readonly string Path
    {
        get
        {
            var path = new StringBuilder("$");
            for (int i = 0; i < depth; i++)
            {
                Frame frame = frames[i];
                if (frame.Index < 0)
                {
                    break;
                }

                path = frame.Names is null
                    ? path.Append('[').Append(DateText.Digits(frame.Index)).Append(']')
                    : path.Append('.').Append(frame.Names[frame.Index]);
            }

            return path.ToString();
        }
    }

    /// <summary>Where the value the reader stands on is, to speak of it after reading.</summary>
    internal DocumentPlace Place()
    {
        (int line, int column) = position.Of(Offset);
        return new DocumentPlace(file, line, column, Path);
    }

    /// <summary>Reports a problem with the value the reader stands on, which stays to be read or skipped.</summary>
    internal void Report(string message) => Report(Offset, message);

    /// <summary>Reports that the value is not what is wanted, and skips it.</summary>
    /// <param name="wanted">What would be right: "a string".</param>
    internal void ReportWrong(string wanted)
    {
        Report(Offset, "Found " + Found() + " where " + wanted + " is wanted."
            + (json.TokenType == JsonTokenType.Null ? " Leave the member out where there is nothing to say." : ""));
        Skip();
    }

    private void Report(int offset, string message) => Report(offset, Path, message);

    private void Report(int offset, string path, string message)
    {
        problems ??= [];
        if (problems.Count < MaxProblems)
        {
            problems.Add((offset, path, message));
        }

        if (problems.Count == MaxProblems)
        {
            problems.Add((text.Length, "$", DateText.Digits(MaxProblems) + " problems are listed; the rest of the document was not read."));
            ended = true;
        }
    }

    private void ReportUnknownMember(MemberNames names)
    {
        string name = TextOrNull() ?? "�";
        string shown = "\"" + Cut(name) + "\"";
        Report(
            Offset,
            Path + Segment(name),
            "The member " + shown + " is not known; " + names.What + " has " + Spelling.List(names.Names) + "." + Spelling.Suggest(name, names.Names));
    }

    private void ReportMissing(Frame frame)
    {
        ulong missing = frame.Names!.Required & ~frame.Seen;
        for (int i = 0; missing >> i != 0; i++)
        {
            if (((missing >> i) & 1) != 0)
            {
                Report(frame.Start, Path, "The member \"" + frame.Names[i] + "\" is missing; " + frame.Names.What + " must have it.");
            }
        }
    }

    /// <summary>The value the reader stands on, in words.</summary>
    private readonly string Found() => json.TokenType switch
    {
        JsonTokenType.String => TextOrNull() is { } value ? "the string \"" + Cut(value) + "\"" : "a string that is not Unicode",
        JsonTokenType.Number => "the number " + Cut(Encoding.UTF8.GetString(json.ValueSpan.ToArray())),
        JsonTokenType.True => "true",
        JsonTokenType.False => "false",
        JsonTokenType.Null => "null",
        JsonTokenType.StartObject => "an object",
        _ => "a list",
    };

    /// <summary>The text of a string or a name, or null where its bytes or escapes are no characters.</summary>
    private readonly string? TextOrNull()
    {
        try
        {
            return json.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private readonly ValueList<DocumentProblem> CollectProblems()
    {
        if (problems is null)
        {
            return ValueList<DocumentProblem>.Empty;
        }

        var places = new TextPosition(text, start);
        var collected = new List<DocumentProblem>(problems.Count);
        foreach ((int offset, string path, string message) in problems.OrderBy(p => p.Offset))
        {
            (int line, int column) = places.Of(offset);
            collected.Add(new DocumentProblem(message, path, file, line, column));
        }

        return ValueList.Of(collected);
    }

    private static string Segment(string name)
        => name.Length > 0 && name.All(c => char.IsLetterOrDigit(c) || c is '_' or '-') ? "." + Cut(name) : "['" + Cut(name) + "']";

    /// <summary>The first characters of a text, without control characters.</summary>
    private static string Cut(string value)
    {
        bool isLong = value.Length > LongestShown;
        int length = isLong ? LongestShown - (char.IsHighSurrogate(value[LongestShown - 1]) ? 1 : 0) : value.Length;
        var shown = new StringBuilder(length + 1);
        foreach (char c in value.Substring(0, length))
        {
            shown.Append(char.IsControl(c) ? ' ' : c);
        }

        return isLong ? shown.Append('…').ToString() : shown.ToString();
    }
}
