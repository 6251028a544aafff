using FsCheck;
using FsCheck.Fluent;

namespace Terminus.Tests;

/// <summary>An entry of the built-in reference made wrong in one way, and the finding that must come of it.</summary>
public sealed record BrokenReference(ReferenceFile File, string Rule, string Id, string Path);

public static partial class Gens
{
    private static readonly ReferenceFile BuiltInFile = BuiltInReference.Load();

    /// <summary>The built-in reference with one entry broken, for each rule that its kinds of entry can break.</summary>
    public static Arbitrary<BrokenReference> BrokenReferences() => Gen.OneOf(
        OrderBroken(), FiledAfterIssued(), NotATuesday(), NumberOfAnotherYear(), UnknownQuestion(), UnknownPatent(), PatentAfterCommon(), FadesAfterGone(), StandsTwice()).ToArbitrary();

    private static Gen<BrokenReference> OrderBroken()
        => from feature in Gen.Elements(BuiltInFile.Features.Where(f => f is { Common: not null, Introduced: not null }))
           let late = EdtfDate.InYear(LastYear(feature.Common!) + 1)
           select Broken(feature, feature with { Introduced = late }, "reference.order", ".common");

    private static Gen<BrokenReference> FiledAfterIssued()
        => from patent in Gen.Elements(BuiltInFile.Patents.ToArray())
           select Broken(patent, patent with { Filed = EdtfDate.InYear(LastYear(patent.Issued!) + 1) }, "reference.filed-after-issued", ".filed");

    private static Gen<BrokenReference> NotATuesday()
        => from patent in Gen.Elements(BuiltInFile.Patents.Where(p => p.Issued!.Window!.Value.Days == 1))
           from days in Gen.Choose(1, 6)
           let day = patent.Issued!.Window!.Value.NotBefore!.Value.PlusDays(days)
           select Broken(patent, patent with { Issued = EdtfDate.From(day) }, "reference.issue-day", ".issued");

    private static Gen<BrokenReference> NumberOfAnotherYear()
        => from patent in Gen.Elements(BuiltInFile.Patents.ToArray())
           from years in Gen.Choose(2, 30)
           let year = EdtfDate.InYear(LastYear(patent.Issued!) - years)
           select Broken(patent, patent with { Issued = year, Filed = null }, "reference.number-year", ".issued");

    private static Gen<BrokenReference> UnknownQuestion()
        => from feature in Gen.Elements(BuiltInFile.Features.ToArray())
           select Broken(feature, feature with { Question = "no.such" }, "reference.unknown-id", ".question");

    private static Gen<BrokenReference> UnknownPatent()
        => from feature in Gen.Elements(BuiltInFile.Features.ToArray())
           let place = feature.Patents.Count
           select Broken(
               feature, feature with { Patents = [.. feature.Patents, "US utility 1"] }, "reference.unknown-id", $".patents[{place}]");

    private static Gen<BrokenReference> PatentAfterCommon()
        => from feature in Gen.Elements(BuiltInFile.Features.Where(f => f.Patents.Count == 1))
           let patent = BuiltInFile.Patents.Single(p => p.Id == feature.Patents[0])
           let early = EdtfDate.InYear(LastYear(patent.Issued!) - 1)
           select Broken(
               feature,
               feature with { PatentOfWiderClass = false, Introduced = null, Common = early, Fading = null, Gone = null },
               "reference.patent-after-common",
               ".patents[0]");

    private static Gen<BrokenReference> FadesAfterGone()
        => from feature in Gen.Elements(BuiltInFile.Features.Where(f => f is { Fading: not null, Gone: null }))
           let gone = EdtfDate.From(DateWindow.Until(feature.Fading!.Window!.Value.NotAfter!.Value.PlusDays(-1)))
           select Broken(feature, feature with { Gone = gone }, "reference.fades-after-gone", ".fading");

    private static Gen<BrokenReference> StandsTwice()
        => from feature in Gen.Elements(BuiltInFile.Features.ToArray())
           let file = BuiltInFile with { Features = [.. BuiltInFile.Features, feature] }
           select new BrokenReference(file, "reference.duplicate-id", feature.Id, feature.Place!.Path + ".id");

    private static BrokenReference Broken<T>(T sound, T broken, string rule, string below)
        where T : ReferenceEntry
    {
        ReferenceFile file = broken switch
        {
            FeatureEntry feature => BuiltInFile with { Features = [.. BuiltInFile.Features.Select(f => ReferenceEquals(f, sound) ? feature : f)] },
            PatentEntry patent => BuiltInFile with { Patents = [.. BuiltInFile.Patents.Select(p => ReferenceEquals(p, sound) ? patent : p)] },
            _ => throw new ArgumentException("The kind is not broken here.", nameof(broken)),
        };
        return new BrokenReference(file, rule, sound.Id, sound.Place!.Path + below);
    }

    private static int LastYear(EdtfDate date) => date.Window!.Value.NotAfter!.Value.Year;
}
