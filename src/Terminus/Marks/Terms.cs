namespace Terminus;

/// <summary>The words that the grammar itself asks for, one bit each; their forms stand in <c>data/marks/words.csv</c> under the same names.</summary>
[Flags]
internal enum Terms : long
{
    None = 0,
    Patent = 1L << 0,
    Pending = 1L << 1,
    Applied = 1L << 2,
    For = 1L << 3,
    Design = 1L << 4,
    Reissue = 1L << 5,
    Plant = 1L << 6,
    Utility = 1L << 7,
    No = 1L << 8,
    And = 1L << 9,
    Also = 1L << 10,
    Other = 1L << 11,
    Letters = 1L << 12,
    Royal = 1L << 13,
    Provisional = 1L << 14,
    Foreign = 1L << 15,
    Dated = 1L << 16,
    Reg = 1L << 17,
    Regd = 1L << 18,
    Rd = 1L << 19,
    Registry = 1L << 20,
    Since = 1L << 21,
    Established = 1L << 22,
    Given = 1L << 23,
    Made = 1L << 24,
    In = 1L << 25,
    By = 1L << 26,
    Of = 1L << 27,
    K = 1L << 28,
    Us = 1L << 29,
    United = 1L << 30,
    Great = 1L << 31,
    World = 1L << 32,
    Angemeldet = 1L << 33,
    Serial = 1L << 34,
    Gold = 1L << 35,
    From = 1L << 36,
    Trade = 1L << 37,
    Brevete = 1L << 38,
    Rolled = 1L << 39,
    Gesetzlich = 1L << 40,
    Gf = 1L << 41,
    Gp = 1L << 42,
    Ge = 1L << 43,
}

/// <summary>Finds the bit of a term by its name in the table of words.</summary>
internal static class TermNames
{
    /// <summary>The bit, or none for a word that the grammar does not ask for.</summary>
    internal static Terms Of(string term)
        => term[0] is >= 'A' and <= 'Z' && Enum.TryParse(term, ignoreCase: true, out Terms found) ? found : Terms.None;
}
