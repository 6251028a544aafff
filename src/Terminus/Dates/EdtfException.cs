namespace Terminus;

/// <summary>A text that was to be an EDTF date is not one. It carries the text, the place and the reason.</summary>
public sealed class EdtfException : FormatException
{
    internal EdtfException(string text, EdtfError error)
        : base("Not an EDTF date: '" + Shown(text) + "'. " + error)
    {
        Text = text;
        Error = error;
    }

    /// <summary>The text as given.</summary>
    public string Text { get; }

    /// <summary>The place and the reason together.</summary>
    public EdtfError Error { get; }

    /// <summary>The place of the first character that is wrong, counted from 0.</summary>
    public int Position => Error.Position;

    /// <summary>What is wrong and what is allowed, as a sentence.</summary>
    public string Reason => Error.Reason;

    private static string Shown(string text) => text.Length <= 80 ? text : text.AsSpan(0, 80).ToString() + "…";
}
