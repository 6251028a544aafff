using FsCheck;
using FsCheck.Fluent;

namespace Terminus.Tests;

public static partial class Gens
{
    /// <summary>
    /// Up to fourteen sightings of one feature from 1850 to 1960, known to the day, the month's length or the year, some of them in the same source.
    /// </summary>
    public static Arbitrary<Sighting[]> SightingArrays()
    {
        Gen<Sighting> one =
            from day in Gen.Choose(DayNumber.Of(1850, 1, 1), DayNumber.Of(1960, 1, 1))
            from length in Gen.Elements(0, 0, 0, 30, 364)
            from source in Gen.Choose(1, 20)
            select new Sighting(DateWindow.OfDays(day, day + length), "catalogue " + DateText.Digits(source), "cuff.invented");
        return (from count in Gen.Choose(0, 14) from all in Gen.ArrayOf(one, count) select all).ToArbitrary();
    }
}
