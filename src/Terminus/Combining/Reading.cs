using System.Globalization;

namespace Terminus;

/// <summary>
/// One way to read evidence that disagrees: the largest set of items that can be true together around some day, and the items
/// it sets aside.
/// </summary>
/// <remarks>
/// The weight is the probability, given that the evidence is not empty, that only items of this set speak and that not all of
/// those that speak belong to another reading too. Weights of all readings add up to at most 1; what is missing fits several readings.
/// </remarks>
public sealed record Reading
{
    private Reading(DateWindow window, double? weight, IEnumerable<int> items, IEnumerable<int> setAside)
    {
        Window = window;
        Weight = weight;
        Items = ValueList.Of(items);
        SetAside = ValueList.Of(setAside);
    }

    /// <summary>The days that the widest windows of the set have in common, up to the day of the opinion.</summary>
    public DateWindow Window { get; }

    /// <summary>The weight, from 0 to 1, or null where certain items exclude each other, so that no weight exists.</summary>
    public double? Weight { get; }

    /// <summary>The indices of the items that this reading keeps.</summary>
    public IReadOnlyList<int> Items { get; }

    /// <summary>The indices of the items that it sets aside.</summary>
    public IReadOnlyList<int> SetAside { get; }

    /// <summary>Such as <c>1883-01-01/1891-12-31 (0.897) of items [0, 1]</c>, never in a culture's format.</summary>
    public override string ToString()
        => Window + " (" + (Weight?.ToString("0.###", CultureInfo.InvariantCulture) ?? "no weight") + ") of items " + Items;

    /// <summary>All readings of a dating, the weightiest first; one where nothing disagrees at face value.</summary>
    internal static IEnumerable<Reading> Of(Dating dating)
    {
        List<(int Low, int High)> places = Places(dating);
        List<HashSet<int>> sets = [.. places.Select(place => Containing(dating, place))];
        double total = dating.NonEmptyMass;
        var readings = new List<Reading>();
        for (int i = 0; i < sets.Count; i++)
        {
            HashSet<int>? before = i > 0 ? sets[i - 1] : null;
            HashSet<int>? after = i + 1 < sets.Count ? sets[i + 1] : null;
            double? weight = total > 0
                ? (Heard(dating, sets[i]) - Heard(dating, Common(sets[i], before)) - Heard(dating, Common(sets[i], after))
                    + Heard(dating, Common(Common(sets[i], before), after))) / total
                : null;
            var all = Enumerable.Range(0, dating.Evidence.Count).Where(item => dating.Stated[item].Length > 0).ToList();
            readings.Add(new Reading(
                DateWindow.OfBounds(places[i].Low, places[i].High),
                weight is { } w ? Math.Min(1, Math.Max(0, w)) : null,
                all.Where(sets[i].Contains),
                all.Where(item => !sets[i].Contains(item))));
        }

        return readings.OrderByDescending(r => r.Weight).ThenByDescending(r => r.Items.Count).ThenBy(r => r.Window.Low);
    }

    // Where a set is largest: from a start up to the next end, with no start between. On a line these are all maximal sets.
    private static List<(int Low, int High)> Places(Dating dating)
    {
        var ends = new List<(int Day, bool IsStart)> { (int.MinValue, true), (dating.AsOfDay, false) };
        for (int item = 0; item < dating.Evidence.Count; item++)
        {
            ReadOnlySpan<StatedDay> windows = dating.Stated[item];
            if (windows.Length > 0 && windows[0].Low <= dating.AsOfDay)
            {
                ends.Add((windows[0].Low, true));
                ends.Add((Math.Min(windows[0].High, dating.AsOfDay), false));
            }
        }

        ends.Sort((a, b) => a.Day != b.Day ? a.Day.CompareTo(b.Day) : b.IsStart.CompareTo(a.IsStart));
        var places = new List<(int, int)>();
        for (int i = 1; i < ends.Count; i++)
        {
            if (ends[i - 1].IsStart && !ends[i].IsStart)
            {
                places.Add((ends[i - 1].Day, ends[i].Day));
            }
        }

        return places;
    }

    private static HashSet<int> Containing(Dating dating, (int Low, int High) place)
    {
        var set = new HashSet<int>();
        for (int item = 0; item < dating.Evidence.Count; item++)
        {
            ReadOnlySpan<StatedDay> windows = dating.Stated[item];
            if (windows.Length > 0 && windows[0].Low <= place.Low && windows[0].High >= place.High)
            {
                set.Add(item);
            }
        }

        return set;
    }

    private static HashSet<int>? Common(HashSet<int>? one, HashSet<int>? other)
        => one is null || other is null ? null : [.. one.Where(other.Contains)];

    // P(only items of the set speak, and their windows meet), not normalised.
    private static double Heard(Dating dating, HashSet<int>? set)
    {
        if (set is null)
        {
            return 0;
        }

        double silent = 1;
        var days = new StatedDays(set.Count);
        for (int item = 0; item < dating.Evidence.Count; item++)
        {
            ReadOnlySpan<StatedDay> windows = dating.Stated[item];
            if (!set.Contains(item))
            {
                silent *= windows.Length == 0 ? 1 : 1 - windows[0].Confidence;
                continue;
            }

            days.AddItem(windows);
        }

        return silent == 0 ? 0 : silent * new Combination(days, dating.AsOfDay).Total;
    }
}
