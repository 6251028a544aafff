using System.Globalization;

namespace Terminus;

/// <summary>How deep a disagreement goes.</summary>
public enum DisagreementLevel
{
    /// <summary>Only what is usual excludes each other: narrower windows, or a widest one that is itself only usage.</summary>
    Usage,

    /// <summary>The widest windows exclude each other: at face value both cannot be true.</summary>
    Face,
}

/// <summary>A pair of items with stated windows that do not meet. In one dimension every minimal conflict is a pair.</summary>
/// <remarks>Source: Helly's theorem in dimension 1: intervals have a common point exactly when every two of them meet.</remarks>
public sealed record Disagreement
{
    private Disagreement(int first, int? second, double mass, DisagreementLevel level, int days, DisagreementCause cause, ValueList<string> parts)
    {
        First = first;
        Second = second;
        Mass = mass;
        Level = level;
        DaysApart = days;
        Cause = cause;
        Parts = parts;
    }

    /// <summary>The index of the first item in <see cref="Dating.Evidence"/>.</summary>
    public int First { get; }

    /// <summary>The index of the second item, or null where the item disagrees with the day of the opinion.</summary>
    public int? Second { get; }

    /// <summary>The mass that the two alone put on no date, from 0 to 1.</summary>
    public double Mass { get; }

    /// <summary>Whether it is at face value or only in usage.</summary>
    public DisagreementLevel Level { get; }

    /// <summary>The days between the two closest windows that exclude each other at that level; at least 1.</summary>
    public int DaysApart { get; }

    /// <summary>What this usually means, from the kinds of the two items.</summary>
    public DisagreementCause Cause { get; }

    /// <summary>The parts of the two items that are named, each once.</summary>
    public IReadOnlyList<string> Parts { get; }

    /// <summary>Such as <c>0 and 2: 0.698 (Face, 12 days apart)</c>, never in a culture's format.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{First} and {Second?.ToString(CultureInfo.InvariantCulture) ?? "today"}: {Mass:0.###} ({Level}, {DaysApart} days apart)");

    /// <summary>All disagreements of a dating, the weightiest first, ties in the order of the items.</summary>
    internal static IEnumerable<Disagreement> Among(Dating dating)
    {
        var found = new List<Disagreement>();
        ReadOnlySpan<StatedDay> today = [new StatedDay(int.MinValue, dating.AsOfDay, 1)];
        for (int first = 0; first < dating.Evidence.Count; first++)
        {
            for (int second = first + 1; second < dating.Evidence.Count; second++)
            {
                AddIfApart(found, dating, first, second, dating.Stated[first], dating.Stated[second]);
            }

            AddIfApart(found, dating, first, null, dating.Stated[first], today);
        }

        return found.Count < 2 ? found : found.OrderByDescending(d => d.Mass);
    }

    private static void AddIfApart(
        List<Disagreement> found, Dating dating, int first, int? second, ReadOnlySpan<StatedDay> one, ReadOnlySpan<StatedDay> other)
    {
        // The windows are nested, so all meet when the innermost do.
        if (one.Length == 0 || other.Length == 0 || Gap(one[one.Length - 1], other[other.Length - 1]) <= 0)
        {
            return;
        }

        double mass = 0;
        for (int i = 0; i < one.Length; i++)
        {
            for (int j = 0; j < other.Length; j++)
            {
                mass += Gap(one[i], other[j]) > 0 ? MassOf(one, i) * MassOf(other, j) : 0;
            }
        }

        Evidence? partner = second is { } index ? dating.Evidence[index] : null;
        Evidence item = dating.Evidence[first];
        long apart = Gap(one[0], other[0]);
        bool atFace = apart > 0 && !item.IsUsageOnly && partner is not { IsUsageOnly: true };
        int days = (int)(apart > 0 ? apart : Gap(one[one.Length - 1], other[other.Length - 1]));
        found.Add(new Disagreement(
            first,
            second,
            mass,
            atFace ? DisagreementLevel.Face : DisagreementLevel.Usage,
            days,
            DisagreementCauses.Of(item, partner, firstIsLater: one[one.Length - 1].Low > other[other.Length - 1].High, days),
            Named(item.Part, partner?.Part)));
    }

    private static ValueList<string> Named(string? one, string? other)
        => (one ?? other) is not { } first ? ValueList<string>.Empty
            : one is null || other is null || string.Equals(one, other, StringComparison.Ordinal) ? ValueList<string>.Owning([first])
            : ValueList<string>.Owning([one, other]);

    private static double MassOf(ReadOnlySpan<StatedDay> windows, int level)
        => windows[level].Confidence - (level + 1 < windows.Length ? windows[level + 1].Confidence : 0);

    // Days from the end of the earlier to the start of the later; not positive where they meet, and then far below an int for open ends.
    private static long Gap(StatedDay one, StatedDay other) => Math.Max((long)one.Low - other.High, (long)other.Low - one.High);
}
