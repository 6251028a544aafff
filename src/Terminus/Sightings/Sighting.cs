namespace Terminus;

/// <summary>
/// One dated sighting of a feature: an advert, a catalogue page, a dated piece. It is taken to be true.
/// </summary>
/// <remarks>Two sightings are equal when their date, source and feature are.</remarks>
public sealed record Sighting
{
    /// <summary>A sighting of a feature in a source.</summary>
    /// <param name="date">When: a day, or the window in which the day lies, such as a whole year.</param>
    /// <param name="source">
    /// What it was seen in, such as one issue of one catalogue. Sightings in one source are not independent and count once. An empty
    /// source is one source like any other.
    /// </param>
    /// <param name="feature">The id of the feature, which may stay empty where all sightings are of one feature.</param>
    public Sighting(DateWindow date, string source, string feature = "")
    {
        Date = date;
        Source = Guard.NotNull(source, nameof(source)).Trim();
        Feature = Guard.NotNull(feature, nameof(feature)).Trim();
    }

    /// <summary>The window in which the day of the sighting lies; a single day where it is known.</summary>
    public DateWindow Date { get; }

    /// <summary>What it was seen in, without space around it. Upper and lower case are one source.</summary>
    public string Source { get; }

    /// <summary>The id of the feature, without space around it.</summary>
    public string Feature { get; }

    /// <summary>Such as <c>1955-01-01/1955-12-31 trade catalogue (cuff.toggle)</c>.</summary>
    public override string ToString() => $"{Date} {Source}{(Feature.Length == 0 ? "" : " (" + Feature + ")")}";
}
