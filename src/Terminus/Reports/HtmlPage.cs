namespace Terminus;

/// <summary>Dated pieces as web pages that stand alone: style and script inside, nothing fetched.</summary>
/// <remarks>The look is no promise; the facts are those of <see cref="ResultDocument"/>. The pages are well-formed XML as well as HTML.</remarks>
public static class HtmlPage
{
    /// <summary>One piece: the answer, the words for use, the picture, why, and the evidence.</summary>
    /// <param name="dating">The dated piece.</param>
    public static string Of(PieceDating dating) => PiecePage.Of(Guard.NotNull(dating, nameof(dating)));

    /// <summary>Many pieces: a picture of the first of them and a table of all, which can be sorted.</summary>
    /// <param name="datings">The dated pieces, in the order of the table.</param>
    /// <param name="notDated">What could not be dated and why, each in words, or null for none; said below the table.</param>
    public static string Of(IEnumerable<PieceDating> datings, IEnumerable<string>? notDated = null)
        => InventoryPage.Of([.. Guard.NotNull(datings, nameof(datings))], [.. notDated ?? []]);
}
