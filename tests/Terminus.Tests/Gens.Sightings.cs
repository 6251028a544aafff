using FsCheck;
using FsCheck.Fluent;

namespace Terminus.Tests;

public static partial class Gens
{
    /// <summary>
    /// Up to fourteen sightings of one feature from 1900 to 1975, known to the day, to 31 days or to a year, some of them in one
    /// source. The widest stated bound of these, 98.5 gaps away, still lies inside the calendar.
    /// </summary>
    public static Arbitrary<Sighting[]> SightingArrays()
    {
        Gen<Sighting> one =
            from day in Gen.Choose(DayNumber.Of(1900, 1, 1), DayNumber.Of(1975, 1, 1))
            from length in Gen.Elements(0, 0, 0, 30, 364)
            from source in Gen.Choose(1, 20)
            select new Sighting(DateWindow.OfDays(day, day + length), "catalogue " + DateText.Digits(source), "cuff.invented");
        return (from count in Gen.Choose(0, 14) from all in Gen.ArrayOf(one, count) select all).ToArbitrary();
    }
}
