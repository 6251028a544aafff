namespace Terminus;

/// <summary>
/// A date for a catalogue record, by the practice of keeping the date that is shown apart from the years that are searched: a display date, the
/// earliest and latest years, and what they rest on.
/// </summary>
/// <remarks>Source of the practice: Categories for the Description of Works of Art (Getty), creation date: display date, earliest date and latest date.</remarks>
public sealed record MuseumDate
{
    internal MuseumDate(string display, int? earliestYear, int latestYear, string? edtf, double confidence, IEnumerable<string> sources)
    {
        Display = display;
        EarliestYear = earliestYear;
        LatestYear = latestYear;
        Edtf = edtf;
        Confidence = confidence;
        Sources = ValueList.Of(sources);
    }

    /// <summary>The date to show, such as <c>1956–1961</c>, <c>1949 or later, likely 1949–1968</c>, <c>undated</c>.</summary>
    public string Display { get; }

    /// <summary>The earliest year to search by; 0 is 1 BCE. Null where the evidence gives none.</summary>
    public int? EarliestYear { get; }

    /// <summary>The latest year to search by; the year of the opinion where the evidence gives none.</summary>
    public int LatestYear { get; }

    /// <summary>The interval in EDTF, or null where it is any date or the evidence contradicts itself.</summary>
    public string? Edtf { get; }

    /// <summary>The level that the earliest and latest years reach.</summary>
    public double Confidence { get; }

    /// <summary>What the date rests on: the sources of the evidence, each once, in its order.</summary>
    public IReadOnlyList<string> Sources { get; }

    /// <summary>Where the evidence contradicts itself the years hold both of the weightiest readings.</summary>
    internal static MuseumDate Of(PieceDating dating)
    {
        IEnumerable<string> sources = dating.Dating.Evidence.Select(e => e.Source).OfType<string>().Distinct(StringComparer.Ordinal);
        string display = DisplayDate.Of(dating);
        if (!dating.Dating.Qualified && dating.Interval is { } interval)
        {
            return new MuseumDate(display, interval.EarliestYear, interval.LatestYear, interval.ToEdtf(), dating.Confidence, sources);
        }

        DateWindow both = dating.Dating.Readings.Take(2).Select(r => r.Window).Aggregate((one, other) => one.Hull(other));
        int? earliest = both.FirstDay == DayNumber.Open ? null : DayNumber.Year(both.FirstDay);
        return new MuseumDate(display, earliest, DayNumber.Year(both.LastDay), null, dating.Confidence, sources);
    }
}
