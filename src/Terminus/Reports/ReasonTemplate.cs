namespace Terminus;

/// <summary>The English of a rule, cut at its parameters once, so that a reason is put into words by copying.</summary>
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
            pieces.Add(new Piece(text.Substring(position, open - position), text.Substring(open + 1, close - open - 1)));
            position = close + 1;
        }

        pieces.Add(new Piece(text.Substring(position), null));
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
            if (piece.Parameter is not null)
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
        if (value.Length == 10 && value[4] == '-' && value[7] == '-'
            && EdtfDate.TryParse(value.ToString(), out EdtfDate? date) && date?.Window is { Days: 1 } day)
        {
            into.AddWords(day.FirstDay);
        }
        else
        {
            into.Add(value);
        }
    }

    private readonly struct Piece(string words, string? parameter)
    {
        internal string Words { get; } = words;

        /// <summary>The parameter after the words, or null at the end.</summary>
        internal string? Parameter { get; } = parameter;
    }
}
