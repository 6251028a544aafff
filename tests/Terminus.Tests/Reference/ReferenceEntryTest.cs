namespace Terminus.Tests.Reference;

/// <summary>What makes two entries equal: every member but the place where they were read.</summary>
public class ReferenceEntryTest
{
    // Each call builds its lists and dates anew, so that equality by reference would fail.
    private static readonly Func<ReferenceEntry>[] Samples =
    [
        () => new FeatureEntry(
            "a", "n", "g", "d", Day(), Day(), Day(), Day(), EvidenceBasis.Law, EvidenceGrade.High, EvidenceBasis.Law, true, ["US utility 1"], "q",
            [new Sighting(DateWindow.InYear(1950), "s")], EstimatedEnds.None, "s", ReferenceOrigin.Memory, "n"),
        () => new QuestionEntry("a", "t", ["cuff fastening"], "back", "s", ReferenceOrigin.Memory, "n"),
        () => new PatentEntry("US utility 1", Day(), Day(), "t", "a", "s", ReferenceOrigin.Memory, "n"),
        () => new MakerEntry("a", "n", Day(), Day(), [new MakerDetail("f", Day(), Day())], [new MakerDetail("f", Day(), Day())], "s", ReferenceOrigin.Memory, "n"),
        () => new AdvertEntry("a", Day(), "w", "m", "f", "m", "s", ReferenceOrigin.Memory, "n"),
        () => new MarkEntry("a", "t", "US", "m", Day(), Day(), true, MarkEnd.Lapsed, "s", ReferenceOrigin.Memory, "n"),
    ];

    public static TheoryData<int> Kinds => [.. Enumerable.Range(0, Samples.Length)];

    [Fact]
    public void Kind_OfEach_IsItsOwn() => Assert.Equal(Enum.GetValues<ReferenceKind>(), Samples.Select(sample => sample().Kind));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Equals_SameContent_IsTrueWithTheSameHash(int kind)
    {
        Assert.Equal(Samples[kind](), Samples[kind]());
        Assert.Equal(Samples[kind]().GetHashCode(), Samples[kind]().GetHashCode());
        Assert.Equal(Samples[kind](), Samples[kind]() with { Place = new DocumentPlace("a.json", 1, 1, "$") });
        Assert.False(Samples[kind]().Equals(null));
        Assert.False(Samples[kind]().Equals(Samples[(kind + 1) % Samples.Length]()));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Equals_AnyMemberDiffers_IsFalse(int kind)
    {
        foreach (var property in Samples[kind]().GetType().GetProperties().Where(p => p.CanWrite))
        {
            ReferenceEntry changed = Samples[kind]();
            property.SetValue(changed, Other(property.PropertyType));
            Assert.True(!changed.Equals(Samples[kind]()) && !Samples[kind]().Equals(changed), property.Name);
        }
    }

    private static EdtfDate Day() => EdtfDate.Parse("1961-07-11");

    private static object Other(Type type) => type switch
    {
        _ when type == typeof(string) => "other",
        _ when type == typeof(bool) => false,
        _ when type == typeof(EdtfDate) => EdtfDate.Parse("1961"),
        _ when type == typeof(EstimatedEnds) => EstimatedEnds.Gone,
        _ when type == typeof(IReadOnlyList<string>) => new[] { "other" },
        _ when type == typeof(IReadOnlyList<Sighting>) => new[] { new Sighting(DateWindow.InYear(1950), "other") },
        _ when type == typeof(IReadOnlyList<MakerDetail>) => new[] { new MakerDetail("other") },
        _ => Enum.ToObject(type, 0),
    };
}
