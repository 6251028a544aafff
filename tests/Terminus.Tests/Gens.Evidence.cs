using FsCheck;
using FsCheck.Fluent;
using NodaTime;

namespace Terminus.Tests;

/// <summary>Evidence of all kinds on one piece, with the day of the opinion.</summary>
public sealed class EvidenceSet
{
    internal EvidenceSet(IReadOnlyList<Evidence> items, LocalDate asOf)
    {
        Items = items;
        AsOf = asOf;
    }

    internal IReadOnlyList<Evidence> Items { get; }

    internal LocalDate AsOf { get; }

    internal Dating Date() => Dating.Of(Items, AsOf);

    internal EvidenceSet With(params Evidence[] more) => new([.. Items, .. more], AsOf);

    public override string ToString() => DateText.Iso(DayNumber.Of(AsOf)) + ": " + string.Join(" | ", Items);
}

/// <summary>The generators of evidence: every kind, random fields, dates so close that ends coincide.</summary>
public static partial class Gens
{
    private const int MostItemsOfASet = 7;

    /// <summary>Sets of up to seven items, sometimes of one item given twice.</summary>
    public static Arbitrary<EvidenceSet> EvidenceSets()
        => Arb.From(
            from count in Gen.Choose(0, MostItemsOfASet)
            from items in Gen.ArrayOf(Item, count)
            from asOf in Gen.Frequency(
                (6, Gen.Constant(new LocalDate(2026, 11, 25))), (2, ClusteredDay), (1, Day))
            select new EvidenceSet(items, asOf),
            set => Enumerable.Range(0, set.Items.Count).Select(i => new EvidenceSet([.. set.Items.Where((_, index) => index != i)], set.AsOf)));

    /// <summary>Items of every kind.</summary>
    public static Arbitrary<Evidence> EvidenceItems() => Arb.From(Item);

    /// <summary>Granted patents, mostly of certain dates.</summary>
    public static Arbitrary<PatentIssued> IssuedPatents() => Arb.From(Issued);

    /// <summary>Dates as evidence knows them.</summary>
    public static Arbitrary<EvidenceDate> EvidenceDates() => Arb.From(When);

    internal static Gen<LocalDate> ClusteredDay => Gen.Frequency(
        (5, Gen.Elements(new LocalDate(1956, 3, 6), new LocalDate(1961, 7, 11), new LocalDate(1961, 7, 10), new LocalDate(1963, 7, 11))),
        (3, Gen.Choose(1948, 1972).Select(year => new LocalDate(year, 1, 1))),
        (2, Gen.Choose(0, 9000).Select(d => new LocalDate(1948, 1, 1).PlusDays(d))));

    internal static Gen<EvidenceDate> When => Gen.Frequency(
        (6, ClusteredDay.Select(EvidenceDate.On)),
        (6, Gen.Choose(1948, 1972).Select(EvidenceDate.InYear)),
        (2, Gen.Choose(1948, 1972).SelectMany(y => Gen.Elements("~", "?", "%").Select(q => EvidenceDate.Parse(y + q)))),
        (1, Gen.Elements("194X", "195X", "196X", "1961-07-11?", "1956-03~", "../1961", "1956/..", "1956/1961").Select(EvidenceDate.Parse)),
        (2, Gen.Choose(1950, 1965).SelectMany(Estimate)),
        (1, Window.Select(EvidenceDate.In)));

    internal static Gen<PatentIssued> Issued
        => from date in When
           from office in Gen.Elements("US", "GB", null)
           from right in Gen.Elements("utility", "design", "patent", null)
           from years in Gen.Frequency((4, Gen.Constant<int?>(null)), (1, Gen.Elements<int?>(0, 3, 1000)))
           from w in Place
           select new PatentIssued(date, office, right, "9999991", years, w.Part, w.Source);

    // The last of a set's kinds is the door for everything else: windows of all shapes.
    internal static Gen<Evidence> Item => Gen.Frequency(
        (3, Issued.Select(e => (Evidence)e)),
        (2, from filed in Maybe from issued in Maybe from w in Place select (Evidence)new PatentPending(filed, issued, part: w.Part, source: w.Source)),
        (2, from date in When
            from right in Gen.Elements("registered-design", "utility-model", "trade-mark", null)
            from w in Place
            select (Evidence)new RightRegistered(date, "GB", right, part: w.Part, source: w.Source)),
        (4, from dates in Maybe.ArrayOf(4)
            from basis in Gen.Elements(Enum.GetValues<EvidenceBasis>())
            from grade in Gen.Elements(Enum.GetValues<EvidenceGrade>())
            from byLaw in Gen.Elements(true, false)
            from w in Place
            select (Evidence)new FeatureSeen("invented", dates[0], dates[1], dates[2], dates[3], basis, grade, byLaw, w.Part, w.Source)),
        (2, from dates in Maybe.ArrayOf(2)
            from end in Gen.Elements(Enum.GetValues<MarkEnd>())
            from byLaw in Gen.Elements(true, false)
            from w in Place
            select (Evidence)new MarkInUse("invented", dates[0], dates[1], byLaw, end, w.Part, w.Source)),
        (1, from date in When
            from grade in Gen.Elements<EvidenceGrade?>(null, EvidenceGrade.Low, EvidenceGrade.High)
            from w in Place
            select (Evidence)new SubjectShown("invented", date, grade, w.Part, w.Source)),
        (2, from date in When
            from purpose in Gen.Elements(Enum.GetValues<InscriptionPurpose>())
            from w in Place
            select (Evidence)new DateInscribed(date, purpose, part: w.Part, source: w.Source)),
        (2, from date in When from isNew in Gen.Elements(true, false) from w in Place select (Evidence)new KnownBy(date, null, isNew, w.Part, w.Source)),
        (2, from dates in Maybe.ArrayOf(2) from w in Place select (Evidence)new MakerActive("invented", dates[0], dates[1], w.Part, w.Source)),
        (2, from first in When from last in Maybe from w in Place select (Evidence)new ModelAdvertised(first, last, null, w.Part, w.Source)),
        (3, from windows in StatedWindowLists from w in Place select (Evidence)new Opinion(windows, part: w.Part, source: w.Source)));

    private static Gen<EvidenceDate?> Maybe => Gen.Frequency((1, Gen.Constant<EvidenceDate?>(null)), (2, When.Select(d => (EvidenceDate?)d)));

    private static Gen<(string? Part, string? Source)> Place
        => from part in Gen.Elements(null, "pin", "back")
           from source in Gen.Elements(null, "seen", "told")
           select (part, source);

    private static Gen<StatedWindow[]> StatedWindowLists
        => from count in Gen.Choose(0, 3)
           from windows in Gen.ArrayOf(Gen.OneOf(Window, Nearby), count)
           from confidences in Gen.ArrayOf(Gen.Elements(RoundHundredths), count)
           select windows.Zip(confidences, (window, hundredths) => new StatedWindow(window, hundredths / 100.0)).ToArray();

    private static Gen<DateWindow> Nearby
        => ClusteredDay.Two().Select(days => DateWindow.Between(LocalDate.Min(days.Item1, days.Item2), LocalDate.Max(days.Item1, days.Item2)));

    private static Gen<EvidenceDate> Estimate(int year)
        => from day in Gen.Choose(1, 300)
           from confidences in Gen.Elements((0.9, 0.8), (0.95, 0.6), (1.0, 1.0), (0.66, 0.5))
           select new EvidenceDate(
           [
               new StatedWindow(DateWindow.InYear(year), 1),
               new StatedWindow(DateWindow.Between(new LocalDate(year, 1, 1).PlusDays(day), new LocalDate(year, 1, 1).PlusDays(day + 60)), confidences.Item1),
               new StatedWindow(DateWindow.On(new LocalDate(year, 1, 1).PlusDays(day + 30)), confidences.Item2),
           ]);
}
