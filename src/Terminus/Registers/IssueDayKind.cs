namespace Terminus;

/// <summary>What the calendar says of a day as a day of issue of US patents.</summary>
internal enum IssueDayKind
{
    /// <summary>Before 31 July 1790: there were no US patents.</summary>
    BeforePatents,

    /// <summary>Before 1848: patents issued on any day of the week.</summary>
    NoFixedWeekday,

    /// <summary>A Tuesday since 1848.</summary>
    Tuesday,

    /// <summary>A Tuesday of a season in which an issue or two were missed.</summary>
    DoubtfulTuesday,

    /// <summary>Another day since 1848: a filing, a foreign date, a trade mark, a misreading or an error.</summary>
    NotTuesday,
}
