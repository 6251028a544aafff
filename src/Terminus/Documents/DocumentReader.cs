using System.Text.Json;

namespace Terminus;

/// <summary>
/// Reads one JSON document strictly and finds everything that is wrong with it in one pass. Each problem has its line, column and JSON
/// path, says what was found and what is allowed, and lets the rest be read.
/// </summary>
/// <remarks>
/// <para>Only text that is not JSON ends the reading: that is one problem, after which every member answers "nothing more". No method
/// throws on any input. Refused: comments, trailing commas, members that are not known or stand twice, null, lone surrogates, U+0000,
/// nesting deeper than <see cref="MaxDepth"/> and documents above <see cref="MaxLength"/> bytes. A byte order mark is accepted. After
/// <see cref="MaxProblems"/> problems the reading ends too.</para>
/// <para>Objects and lists are read in loops, and each pass stands on a value that one of the Read methods, or <see cref="Skip"/>,
/// takes whole:</para>
/// <code>
/// if (reader.OpenObject(Names))
/// {
///     while (reader.NextMember(out string member))
///     {
///         switch (member) { case "id": id = reader.ReadName(); break; … default: reader.Skip(); break; }
///     }
/// }
/// </code>
/// </remarks>
internal ref partial struct DocumentReader
{
    /// <summary>How deep objects and lists may nest.</summary>
    internal const int MaxDepth = 64;

    /// <summary>The most bytes a document may have: 64 MiB. Collections are read line by line and have no limit.</summary>
    internal const int MaxLength = 64 * 1024 * 1024;

    /// <summary>The most problems that are listed; after them the reading ends.</summary>
    internal const int MaxProblems = 1000;

    private readonly ReadOnlySpan<byte> text;
    private readonly string? file;
    private readonly int start;
    private Utf8JsonReader json;
    private TextPosition position;
    private Frame[] frames;
    private int depth;
    private bool ended;
    private List<(int Offset, string Path, string Message)>? problems;

    /// <summary>Starts on the document's one value, which an Open or Read method then takes.</summary>
    /// <param name="utf8">The document.</param>
    /// <param name="file">The name to show in problems, or null.</param>
    internal DocumentReader(ReadOnlySpan<byte> utf8, string? file = null)
    {
        text = utf8;
        this.file = file;
        start = utf8.Length >= 3 && utf8[0] == 0xEF && utf8[1] == 0xBB && utf8[2] == 0xBF ? 3 : 0;
        json = new Utf8JsonReader(utf8.Slice(start), new JsonReaderOptions { MaxDepth = MaxDepth });
        position = new TextPosition(utf8, start);
        frames = new Frame[4];
        if (utf8.Length > MaxLength)
        {
            ended = true;
            Report(0, "The document has " + DateText.Digits(utf8.Length) + " bytes; at most " + DateText.Digits(MaxLength) + " are read.");
        }
        else
        {
            Advance();
        }
    }

    /// <summary>True when the text stopped being JSON, or the document was over; nothing more can be read.</summary>
    internal readonly bool IsEnded => ended;

    /// <summary>True when the text stopped being JSON, which is then the last problem.</summary>
    internal bool IsDefective { get; private set; }

    /// <summary>What kind of value the reader stands on.</summary>
    internal readonly JsonTokenType Token => ended ? JsonTokenType.None : json.TokenType;

    /// <summary>Where the value starts that the reader stands on, as a byte offset.</summary>
    internal readonly int Offset => start + (int)json.TokenStartIndex;

    /// <summary>Enters the object the reader stands on, or reports and skips what is none.</summary>
    internal bool OpenObject(MemberNames names)
    {
        // What is wanted is put into words only where it is not there.
        if (Token != JsonTokenType.StartObject)
        {
            return Expect(JsonTokenType.StartObject, names.What + ", an object in { },");
        }

        Push(new Frame { Names = names, Start = Offset, Index = -1 });
        return true;
    }

    /// <summary>
    /// Goes to the value of the next known member. Unknown and repeated ones are reported and skipped; at the end of the object the
    /// required ones that are missing are reported, and the answer is false.
    /// </summary>
    internal bool NextMember(out string name)
    {
        ref Frame frame = ref frames[depth - 1];
        int last = frame.Index;
        frame.Index = -1;
        while (Advance() && json.TokenType == JsonTokenType.PropertyName)
        {
            int nameOffset = Offset;
            int index = Find(frame.Names!, last + 1);
            if (index < 0)
            {
                ReportUnknownMember(frame.Names!);
                SkipMember();
                continue;
            }

            last = index;
            if ((frame.Seen & (1UL << index)) != 0)
            {
                Report(nameOffset, Path + "." + frame.Names![index], "The member \"" + frame.Names[index] + "\" stands twice in this object; only its first value is read.");
                SkipMember();
                continue;
            }

            frame.Seen |= 1UL << index;
            frame.Index = index;
            name = frame.Names![index];
            return Advance();
        }

        name = "";
        if (!ended)
        {
            ReportMissing(frame);
        }

        depth--;
        return false;
    }

    /// <summary>Enters the list the reader stands on, or reports and skips what is none.</summary>
    /// <param name="what">What the list holds, in the plural: "marks".</param>
    internal bool OpenArray(string what)
    {
        if (Token != JsonTokenType.StartArray)
        {
            return Expect(JsonTokenType.StartArray, "a list of " + what + " in [ ]");
        }

        Push(new Frame { Start = Offset, Index = -1 });
        return true;
    }

    /// <summary>Goes to the next value of the list; false at its end.</summary>
    internal bool NextItem()
    {
        if (Advance() && json.TokenType != JsonTokenType.EndArray)
        {
            frames[depth - 1].Index++;
            return true;
        }

        depth--;
        return false;
    }

    /// <summary>Passes over the value the reader stands on, whatever it is.</summary>
    internal void Skip()
    {
        if (ended || json.TokenType is not (JsonTokenType.StartObject or JsonTokenType.StartArray))
        {
            return;
        }

        int level = json.CurrentDepth;
        while (Advance() && json.CurrentDepth > level)
        {
        }
    }

    /// <summary>Reports anything that follows the document's one value, and returns all problems in the order of the document.</summary>
    internal IReadOnlyList<DocumentProblem> Finish()
    {
        if (!ended && Advance())
        {
            Report(Offset, "The document holds one value; something more follows it.");
        }

        ended = true;
        return CollectProblems();
    }

    /// <summary>Goes to the next token; false at the end of the document or where the text is not JSON.</summary>
    private bool Advance()
    {
        if (ended)
        {
            return false;
        }

        try
        {
            if (json.Read())
            {
                return true;
            }
        }
        catch (JsonException defect)
        {
            int offset = position.OffsetOf(defect.LineNumber ?? 0, defect.BytePositionInLine ?? 0);
            Report(offset, JsonDefect.Describe(text, offset, json.CurrentDepth));
            IsDefective = true;
        }

        ended = true;
        return false;
    }

    private void SkipMember()
    {
        if (Advance())
        {
            Skip();
        }
    }

    private bool Expect(JsonTokenType type, string wanted)
    {
        if (ended)
        {
            return false;
        }

        if (json.TokenType == type)
        {
            return true;
        }

        ReportWrong(wanted);
        return false;
    }

    /// <summary>The index of the name the reader stands on, looking first where the usual order would have it; -1 where it is not known.</summary>
    private readonly int Find(MemberNames names, int guess)
    {
        try
        {
            for (int i = 0; i < names.Count; i++)
            {
                int index = (guess + i) % names.Count;
                if (json.ValueTextEquals(names.Utf8(index)))
                {
                    return index;
                }
            }
        }
        catch (InvalidOperationException)
        {
            // An escape that is no character: such a name is not known, and is reported as found.
        }

        return -1;
    }

    private void Push(Frame frame)
    {
        if (depth == frames.Length)
        {
            Array.Resize(ref frames, depth * 2);
        }

        frames[depth++] = frame;
    }

    /// <summary>One open object or list: its names and the member it stands on, or the index of its current item.</summary>
    private struct Frame
    {
        internal MemberNames? Names;
        internal int Index;
        internal int Start;
        internal ulong Seen;
    }
}
