namespace Terminus;

/// <summary>One meaning of a word that is stamped on things.</summary>
/// <param name="Term">The word that stands for all its forms, such as <c>PATENT</c>.</param>
/// <param name="Class">How phrases may name it.</param>
/// <param name="Office">For a country or its adjective, the office as a code of WIPO standard ST.3.</param>
/// <param name="Month">For a month, its number; otherwise 0.</param>
internal sealed record Lexeme(string Term, WordClass Class, string? Office = null, int Month = 0)
{
    /// <summary>What the tree of phrases knows the word by.</summary>
    internal int Key { get; init; }
}

/// <summary>The classes of words.</summary>
internal enum WordClass
{
    /// <summary>A word for itself.</summary>
    Word,

    /// <summary>A word before a number, such as <c>No.</c></summary>
    NumberWord,

    /// <summary>The name of a country.</summary>
    Country,

    /// <summary>The adjective of a country.</summary>
    Demonym,

    /// <summary>The name of a month.</summary>
    Month,

    /// <summary>The measure of gold.</summary>
    Karat,
}
