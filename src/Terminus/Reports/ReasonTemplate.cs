namespace Terminus;

/// <summary>The English of a rule, cut at its parameters once, so that a reason is put into words by copying.</summary>
/// <remarks><c>{count}</c> stands for the parameter of that name, <c>{count:day|days}</c> for the first word where it is 1 and else for the second.</remarks>
internal sealed class ReasonTemplate
{
    private readonly List<Piece> pieces = [];
    private readonly bool isSentence;

    /// <param name="text">The words, with the parameters in braces.</param>
    internal ReasonTemplate(string text)
    {
        Text = text;
        isSentence = text.Length > 0 && text[text.Length - 1] == '.';
        int position = 0;
        while (text.IndexOf('{', position) is var open and >= 0 && text.IndexOf('}', open) is var close and >= 0)
        {
            pieces.Add(Piece.Of(text.Substring(position, open - position), text.Substring(open + 1, close - open - 1)));
            position = close + 1;
        }

        pieces.Add(Piece.Of(text.Substring(position), null));
    }

    /// <summary>The words, with the parameters in braces.</summary>
    internal string Text { get; }

    /// <summary>Adds the words with the values in place of the parameters; a sentence that starts with one gets a capital.</summary>
    internal void Fill(ReasonDraft values, TextBuffer into)
    {
        int start = into.Length;
        foreach (Piece piece in pieces)
        {
            into.Add(piece.Words);
            if (piece.Many is not null)
            {
                into.Add(values[piece.Parameter!] is ['1'] ? piece.One : piece.Many);
            }
            else if (piece.Parameter is not null)
            {
                AddInWords(values[piece.Parameter], into);
            }
        }

        if (isSentence)
        {
            into.Capitalise(start);
        }
    }

    /// <summary>A parameter that is a day in ISO form as words, such as <c>17 April 1894</c>; any other as it is.</summary>
    private static void AddInWords(ReadOnlySpan<char> value, TextBuffer into)
    {
        if (EdtfParser.DayOf(value) is { } day)
        {
            into.AddWords(day);
        }
        else
        {
            into.Add(value);
        }
    }

    private readonly struct Piece
    {
        /// <summary>The words before the parameter.</summary>
        internal string Words { get; private init; }

        /// <summary>The parameter after the words, or null at the end.</summary>
        internal string? Parameter { get; private init; }

        /// <summary>What stands for the parameter where it is 1, or null where the parameter itself does.</summary>
        internal string? One { get; private init; }

        /// <summary>What stands for the parameter where it is not 1.</summary>
        internal string? Many { get; private init; }

        internal static Piece Of(string words, string? parameter)
            => parameter?.Split(':', '|') is [var count, var one, var many]
                ? new Piece { Words = words, Parameter = count, One = one, Many = many }
                : new Piece { Words = words, Parameter = parameter };
    }
}
