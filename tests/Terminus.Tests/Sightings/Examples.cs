using NodaTime;
using NodaTime.Text;

namespace Terminus.Tests.Sightings;

/// <summary>Short ways to write invented sightings, each in a source of its own.</summary>
internal static class Examples
{
    internal static Sighting[] Years(params int[] years)
        => [.. years.Select((y, i) => new Sighting(DateWindow.InYear(y), "catalogue " + DateText.Digits(i)))];

    internal static Sighting[] Days(params string[] days)
        => [.. days.Select((d, i) => new Sighting(DateWindow.On(Date(d)), "catalogue " + DateText.Digits(i)))];

    internal static LocalDate Date(string iso) => LocalDatePattern.Iso.Parse(iso).Value;
}
