using System.Text.Json;

namespace Terminus;

/// <content>Single values. Each method takes the value whole; where it is not what is wanted it is reported, and the answer is null.</content>
internal ref partial struct DocumentReader
{
    /// <summary>The longest name or id.</summary>
    private const int LongestName = 200;

    /// <summary>The only format of documents so far.</summary>
    private const int Format = 1;

    private static readonly TextsReadBefore<string> Names = new();

    /// <summary>A string, which may be empty and may hold line breaks.</summary>
    internal string? ReadString(string wanted = "a string")
    {
        if (!Expect(JsonTokenType.String, wanted))
        {
            return null;
        }

        string? value = TextOrNull();
        if (value is null)
        {
            Report("The string has bytes or escapes that are no Unicode characters.");
        }
        else if (value.AsSpan().IndexOf('\0') >= 0)
        {
            Report("The string has the character U+0000, which no text has.");
            value = null;
        }

        return value;
    }

    /// <summary>A name or an id: not blank, without spaces at its ends or control characters, at most 200 characters.</summary>
    internal string? ReadName(string wanted = "a name")
    {
        if (IsPlainString && Names.Find(json.ValueSpan) is { } known)
        {
            return known;
        }

        string? value = ReadNewName(wanted);
        if (value is not null && IsPlainString)
        {
            Names.Keep(json.ValueSpan, value);
        }

        return value;
    }

    /// <summary>A name that no other document is likely to have, such as the id of a piece.</summary>
    internal string? ReadNewName(string wanted)
    {
        string? value = IsString ? ReadString() : ReadString(wanted + ", a string,");
        if (value is null)
        {
            return null;
        }

        if (!IsName(value))
        {
            Report("Found the string \"" + Cut(value) + "\" where " + wanted
                + " is wanted: 1 to 200 characters on one line, with no space at either end.");
            return null;
        }

        return value;
    }

    /// <summary>Whether the reader stands on a string without escapes, whose text is its bytes.</summary>
    private readonly bool IsPlainString => IsString && !json.ValueIsEscaped;

    private readonly bool IsString => !ended && json.TokenType == JsonTokenType.String;

    private static bool IsName(string value)
    {
        if (value.Length is 0 or > LongestName || char.IsWhiteSpace(value[0]) || char.IsWhiteSpace(value[value.Length - 1]))
        {
            return false;
        }

        foreach (char c in value)
        {
            if (char.IsControl(c))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>True or false.</summary>
    internal bool? ReadBool()
    {
        if (!ended && json.TokenType is JsonTokenType.True or JsonTokenType.False)
        {
            return json.GetBoolean();
        }

        Expect(JsonTokenType.True, "true or false");
        return null;
    }

    /// <summary>A number that a double can hold, from <paramref name="least"/> to <paramref name="most"/>.</summary>
    internal double? ReadNumber(double least, double most, string wanted)
    {
        if (!Expect(JsonTokenType.Number, wanted))
        {
            return null;
        }

        if (json.TryGetDouble(out double value) && value >= least && value <= most)
        {
            return value;
        }

        ReportWrong(wanted);
        return null;
    }

    /// <summary>A whole number.</summary>
    internal int? ReadInteger(int least, int most, string wanted)
    {
        if (!Expect(JsonTokenType.Number, wanted))
        {
            return null;
        }

        if (json.TryGetInt32(out int value) && value >= least && value <= most)
        {
            return value;
        }

        ReportWrong(wanted);
        return null;
    }

    /// <summary>A confidence, from 0 to 1.</summary>
    internal double? ReadConfidence() => ReadNumber(0, 1, "a confidence, a number from 0 (says nothing) to 1 (certain),");

    /// <summary>One of a closed list of words; the message lists them.</summary>
    /// <param name="choices">The words.</param>
    /// <param name="what">What they are, with the article: "a basis".</param>
    internal T? ReadChoice<T>(Choices<T> choices, string what)
        where T : struct, Enum
    {
        string? word = IsString ? TextOrNull() : null;
        T? value = word is null ? null : choices.Find(word);
        if (value is not null)
        {
            return value;
        }

        string wanted = what + " (" + Spelling.List(choices.Words) + ")";
        if (Expect(JsonTokenType.String, wanted))
        {
            Report("Found " + Found() + " where " + wanted + " is wanted." + (word is null ? "" : Spelling.Suggest(word, choices.Words)));
        }

        return null;
    }

    /// <summary>The member <c>format</c>: 1, or a higher one, which is refused by name.</summary>
    internal void ReadFormat()
    {
        int? format = ReadInteger(1, int.MaxValue, "the format of the document, the whole number 1,");
        if (format > Format)
        {
            Report("The document has format " + DateText.Digits(format.Value) + "; this version of the library reads format 1 and needs to be newer.");
        }
    }

    /// <summary>A list of names, with those that are none left out.</summary>
    internal List<string> ReadNames(string what, string one)
    {
        var names = new List<string>();
        if (OpenArray(what))
        {
            while (NextItem())
            {
                if (ReadName(one) is { } name)
                {
                    names.Add(name);
                }
            }
        }

        return names;
    }
}
