namespace Terminus;

/// <summary>
/// A British registry diamond, the mark of designs registered from 1842 to 1883, as far as it can be read. What is not legible is null.
/// </summary>
/// <remarks>
/// From 1842 to 1867 the year letter stands at the top, the day at the right, the parcel number at the bottom and the month letter at
/// the left; from 1868 to 1883 the day stands at the top, the year at the right, the month at the bottom and the parcel at the left. The
/// class stands in a circle above. Source: porcelainmarksandmore.com; The National Archives guide to registered designs.
/// </remarks>
public sealed record RegistryDiamond
{
    /// <summary>States the parts of a diamond by their meaning.</summary>
    /// <param name="cycle">1 for 1842 to 1867 (a letter at the top), 2 for 1868 to 1883 (a figure at the top), or null.</param>
    /// <param name="year">The year letter, in any case, or null.</param>
    /// <param name="month">The month letter, in any case, or null.</param>
    /// <param name="day">The day of the month, or null.</param>
    /// <param name="parcel">The parcel number, or null; it says nothing of the date.</param>
    /// <param name="goodsClass">The class, such as <c>IV</c>, or null; it says the material.</param>
    public RegistryDiamond(
        int? cycle = null, char? year = null, char? month = null, int? day = null, int? parcel = null, string? goodsClass = null)
    {
        Cycle = cycle;
        Year = Upper(year);
        Month = Upper(month);
        Day = day;
        Parcel = parcel;
        Class = goodsClass?.Trim().ToUpperInvariant();
    }

    /// <summary>1 for 1842 to 1867, 2 for 1868 to 1883, or null where that is not known.</summary>
    public int? Cycle { get; }

    /// <summary>The year letter, or null.</summary>
    public char? Year { get; }

    /// <summary>The month letter, or null.</summary>
    public char? Month { get; }

    /// <summary>The day of the month, or null.</summary>
    public int? Day { get; }

    /// <summary>The parcel number, or null.</summary>
    public int? Parcel { get; }

    /// <summary>The class in Roman figures, or null.</summary>
    public string? Class { get; }

    /// <summary>
    /// Takes a diamond as it is seen, corner by corner: a letter in the top corner means 1842 to 1867, a figure 1868 to 1883. A corner
    /// that cannot be read is null, empty or <c>?</c>; without the top corner the others tell the cycle in the same way.
    /// </summary>
    /// <param name="top">The top corner.</param>
    /// <param name="right">The corner at the right.</param>
    /// <param name="bottom">The bottom corner.</param>
    /// <param name="left">The corner at the left.</param>
    /// <param name="goodsClass">The class above the top corner, or null.</param>
    public static RegistryDiamond FromCorners(string? top, string? right, string? bottom, string? left, string? goodsClass = null)
    {
        int? cycle = IsLetter(top) || IsFigure(right) || IsFigure(bottom) || IsLetter(left) ? 1
            : IsFigure(top) || IsLetter(right) || IsLetter(bottom) || IsFigure(left) ? 2
            : null;
        return cycle == 2
            ? new RegistryDiamond(2, Letter(right), Letter(bottom), Figure(top), Figure(left), goodsClass)
            : new RegistryDiamond(cycle, Letter(top), Letter(left), Figure(right), Figure(bottom), goodsClass);
    }

    /// <summary>Reads the date of registration. A mark that the registry cannot have used is an outcome with a reason.</summary>
    public NumberReading Read() => DiamondReader.Read(this);

    /// <summary>The parts in words, such as <c>cycle 1, year R, month D, day 13, parcel 4, class IV</c>.</summary>
    public override string ToString()
        => string.Join(", ", new[]
        {
            Part("cycle", Cycle), Part("year", Year), Part("month", Month), Part("day", Day), Part("parcel", Parcel), Part("class", Class),
        }.Where(p => p.Length > 0));

    private static string Part(string name, object? value)
        => value is null ? "" : name + " " + Convert.ToString(value, System.Globalization.CultureInfo.InvariantCulture);

    private static char? Upper(char? letter) => letter is { } c ? char.ToUpperInvariant(c) : null;

    private static bool IsLetter(string? text) => Letter(text) is not null;

    private static bool IsFigure(string? text) => Figure(text) is not null;

    private static char? Letter(string? text)
        => text?.Trim() is { Length: 1 } one && char.IsLetter(one[0]) ? one[0] : null;

    private static int? Figure(string? text)
        => NumberPattern.TryCreate(text?.Trim() ?? "", false, null, out NumberPattern pattern) && pattern.IsExact ? pattern.Value : null;
}
