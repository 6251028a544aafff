using NodaTime;

namespace Terminus.Tests.Reference;

public class FeatureEntryTest
{
    private static readonly FeatureEntry Tumbler = new(
        "cuff.tumbler",
        "tumbler back",
        introduced: EdtfDate.InYear(1950),
        basis: EvidenceBasis.Patent,
        endedBy: EvidenceBasis.Law,
        sightings: [Seen(1952, 3), Seen(1956, 3), Seen(1959, 3)]);

    [Fact]
    public void GradeCounted_OfWhatIsRecalled_IsLow()
        => Assert.Equal(EvidenceGrade.Low, new FeatureEntry("a", "a", grade: EvidenceGrade.High, origin: ReferenceOrigin.Memory).GradeCounted);

    [Fact]
    public void CountsAs_PatentOfAWiderClass_IsTrade()
    {
        Assert.Equal(EvidenceBasis.Patent, Tumbler.CountsAs);
        Assert.Equal(EvidenceBasis.Trade, (Tumbler with { PatentOfWiderClass = true }).CountsAs);
    }

    [Fact]
    public void WithEstimate_SetsTheEndFromItsSightings_AndCountsAsTrade()
    {
        FeatureEntry estimated = Tumbler.WithEstimate(EstimatedEnds.Both);
        SightingEstimate first = SightingEstimate.Of(Tumbler.Sightings, SightingEnd.First, SightingMethod.Abrupt, 0.9);
        SightingEstimate last = SightingEstimate.Of(Tumbler.Sightings, SightingEnd.Last, SightingMethod.Abrupt, 0.9);
        Assert.Equal(DateWindow.Between(first.Bound, new LocalDate(1952, 3, 1)), estimated.Introduced!.Window);
        Assert.Equal(DateWindow.Between(new LocalDate(1959, 3, 1), last.Bound), estimated.Gone!.Window);
        Assert.Equal(EvidenceBasis.Trade, estimated.CountsAs);
        Assert.False(estimated.IsEndedByFact);
        Assert.True(Tumbler.IsEndedByFact);
    }

    [Fact]
    public void New_WithAnEstimate_SetsTheEndsAsWithEstimateDoes()
    {
        FeatureEntry made = new(
            Tumbler.Id, Tumbler.Name, introduced: Tumbler.Introduced, basis: Tumbler.Basis, endedBy: Tumbler.EndedBy, sightings: Tumbler.Sightings,
            estimate: EstimatedEnds.Both);
        Assert.Equal(Tumbler.WithEstimate(EstimatedEnds.Both), made);
    }

    [Fact]
    public void WithSighting_OfAnEstimatedFeature_EstimatesItAnewAndKeepsTheSightings()
    {
        FeatureEntry before = Tumbler.WithEstimate(EstimatedEnds.Introduced);
        FeatureEntry after = before.WithSighting(Seen(1951, 2));
        Assert.Equal([.. Tumbler.Sightings, Seen(1951, 2)], after.Sightings);
        Assert.Equal(new LocalDate(1951, 2, 1), after.Introduced!.Window!.Value.NotAfter);
        Assert.NotEqual(before.Introduced, after.Introduced);
    }

    [Fact]
    public void WithSighting_OfAFeatureNotEstimated_LeavesItsDates()
        => Assert.Equal(Tumbler.Introduced, Tumbler.WithSighting(Seen(1940, 1)).Introduced);

    [Fact]
    public void WithEstimate_SightingsRefused_LeavesTheEndOpen()
        => Assert.Null((Tumbler with { Sightings = [Seen(1952, 3)] }).WithEstimate(EstimatedEnds.Introduced).Introduced);

    [Fact]
    public void Read_EstimatedFeature_IsEstimatedFromTheSightingsInTheFile()
    {
        var file = new ReferenceFile("a", "1", features: [Tumbler.WithEstimate(EstimatedEnds.Introduced) with { Source = "s" }]);
        string later = file.ToJson().Replace("1952-03-01", "1951-02-01", StringComparison.Ordinal);
        Assert.Equal(file, ReferenceFile.Read(file.ToJson()).OrThrow());
        Assert.Equal(new LocalDate(1951, 2, 1), ReferenceFile.Read(later).OrThrow().Features[0].Introduced!.Window!.Value.NotAfter);
    }

    private static Sighting Seen(int year, int month) => new(DateWindow.On(new LocalDate(year, month, 1)), $"catalogue of {year}");
}
