namespace Terminus;

/// <summary>Why a text is not an EDTF date, and where.</summary>
public sealed class EdtfError
{
    internal EdtfError(int position, string reason)
    {
        Position = position;
        Reason = reason;
    }

    /// <summary>
    /// The place of the first character that is wrong, counted from 0; the length of the text where something is missing at its end.
    /// </summary>
    public int Position { get; }

    /// <summary>What is wrong and what is allowed, as a sentence.</summary>
    public string Reason { get; }

    /// <summary>The reason with its place, such as <c>At position 5: A month is 01 to 12, …</c></summary>
    public override string ToString() => "At position " + DateText.Digits(Position) + ": " + Reason;
}
