using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Terminus;

/// <summary>
/// A date as EDTF writes it: the Extended Date/Time Format of ISO 8601-2:2019 in the profile of the Library of Congress (4 February 2019,
/// https://www.loc.gov/standards/datetime/), levels 0, 1 and 2.
/// </summary>
/// <remarks>
/// <para>
/// What counts here is the first and the last day that the text allows. A set is its hull, and so are unspecified digits: <c>156X-12-25</c>
/// runs from Christmas 1560 to Christmas 1569. A time of day is checked and says no more than its day, the local one as written. The
/// qualifiers <c>?</c>, <c>~</c> and <c>%</c> have no width in the standard and widen nothing here; they are reported.
/// </para>
/// <para>
/// The standard gives no dates of seasons. By convention a season is three whole months as meteorologists count them, one without a
/// hemisphere (21 to 24) is the hull of north and south, and one that begins in December runs into the next year. A digit X in a month is
/// never part of a season. Significant digits are counted from the first that is not 0. Year 0000 is 1 BCE, and there is no -0000.
/// </para>
/// <para>
/// Reading is strict: no blanks, no lower case, ASCII digits alone, at most 1,000 characters, an interval or range that does not end before
/// it begins, hours 00 to 23, and no interval without a date. The type is immutable and safe on any thread. Two dates are equal when
/// their texts are.
/// </para>
/// </remarks>
public sealed class EdtfDate : IEquatable<EdtfDate>
{
    private readonly EdtfReading reading;

    private EdtfDate(string text, in EdtfReading reading)
    {
        Text = text;
        this.reading = reading;
    }

    /// <summary>The text as given.</summary>
    public string Text { get; }

    /// <summary>The lowest level of the standard that has all features of the text: 0, 1 or 2.</summary>
    public int Level => reading.Level;

    /// <summary>The first day that the text allows, or an open or unknown start.</summary>
    public EdtfBound Earliest => reading.Earliest;

    /// <summary>The last day that the text allows, or an open or unknown end.</summary>
    public EdtfBound Latest => reading.Latest;

    /// <summary>
    /// The window from <see cref="Earliest"/> to <see cref="Latest"/>, or null where a known end lies outside the ISO calendar, years -9998
    /// to 9999. Open and unknown ends are both open in the window.
    /// </summary>
    public DateWindow? Window => reading.Window;

    /// <summary>Whether the date or any part of it is uncertain (<c>?</c> or <c>%</c>).</summary>
    public bool IsUncertain => reading.IsUncertain;

    /// <summary>Whether the date or any part of it is approximate (<c>~</c> or <c>%</c>).</summary>
    public bool IsApproximate => reading.IsApproximate;

    /// <summary>Reads an EDTF text.</summary>
    /// <param name="text">The text, without blanks around it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="EdtfException">The text is not EDTF; the exception says why and where.</exception>
    public static EdtfDate Parse(string text)
        => TryParse(Guard.NotNull(text, nameof(text)), out EdtfDate? date, out EdtfError? error)
            ? date
            : throw new EdtfException(text, error);

    /// <summary>Reads an EDTF text if it is one; never throws.</summary>
    /// <param name="text">The text; null is not EDTF.</param>
    /// <param name="date">The date, or null.</param>
    public static bool TryParse(string? text, [NotNullWhen(true)] out EdtfDate? date) => TryParse(text, out date, out _);

    /// <summary>Reads an EDTF text if it is one, and says why if not; never throws.</summary>
    /// <param name="text">The text; null is not EDTF.</param>
    /// <param name="date">The date, or null.</param>
    /// <param name="error">What is wrong and where, or null.</param>
    public static bool TryParse(string? text, [NotNullWhen(true)] out EdtfDate? date, [NotNullWhen(false)] out EdtfError? error)
    {
        bool isRead = EdtfParser.TryRead(text.AsSpan(), out EdtfReading reading, out error);
        date = isRead ? new EdtfDate(text!, reading) : null;
        if (!isRead && EdtfMeant.Of(text) is { } meant)
        {
            error = new EdtfError(error!.Position, error.Reason + " Did you mean \"" + meant + "\"?");
        }

        return isRead;
    }

    /// <summary>A single day, such as <c>1956-03-06</c>.</summary>
    /// <param name="date">The day; another calendar is converted to ISO.</param>
    public static EdtfDate From(LocalDate date) => Parse(DateText.Iso(date));

    /// <summary>
    /// A window as <see cref="DateWindow.ToEdtf"/> writes it, such as <c>1956-03-06/..</c>, or null for any date, which EDTF cannot write.
    /// </summary>
    /// <param name="window">The window.</param>
    public static EdtfDate? From(DateWindow window) => window.ToEdtf() is { } text ? Parse(text) : null;

    /// <summary>A whole year, such as <c>1956</c>, <c>-0043</c> or <c>Y12000</c>.</summary>
    /// <param name="year">Any year; 0 is 1 BCE.</param>
    public static EdtfDate InYear(int year)
        => Parse(year is < -9999 or > 9999 ? "Y" + DateText.Digits(year) : DateText.Year(year));

    /// <inheritdoc/>
    public bool Equals([NotNullWhen(true)] EdtfDate? other) => other is not null && Text == other.Text;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as EdtfDate);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    /// <summary>Whether two texts are the same.</summary>
    public static bool operator ==(EdtfDate? left, EdtfDate? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two texts differ.</summary>
    public static bool operator !=(EdtfDate? left, EdtfDate? right) => !(left == right);

    /// <summary>The canonical text, which is the text as given: strict reading leaves one spelling of each statement.</summary>
    public override string ToString() => Text;
}
