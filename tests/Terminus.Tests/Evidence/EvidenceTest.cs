namespace Terminus.Tests.EvidenceKinds;

public class EvidenceTest
{
    // Each call builds its lists and dates anew, so that equality by reference would fail.
    private static readonly Func<Terminus.Evidence>[] Samples =
    [
        () => new PatentIssued(Day(), "US", "utility", "9999991", 17, "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new PatentPending(Day(), Day(), "US", "utility", "9999991", "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new RightRegistered(Day(), "GB", "registered-design", "123", 15, "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new FeatureSeen("f", Day(), Day(), Day(), Day(), EvidenceBasis.Law, EvidenceGrade.High, true, "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new MarkInUse("w", Day(), Day(), true, MarkEnd.Lapsed, "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new SubjectShown("s", Day(), EvidenceGrade.High, "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new DateInscribed(Day(), InscriptionPurpose.Commemorative, "t", "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new KnownBy(Day(), "receipt", true, "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new MakerActive("m", Day(), Day(), "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new ModelAdvertised(Day(), Day(), "catalogue", "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
        () => new Opinion([new StatedWindow(DateWindow.InYear(1961), 0.9)], "I", ["x"], "l", "pin", "seen", ["a"], [new Reason("r", "n", "1")]),
    ];

    public static TheoryData<int> Kinds => [.. Enumerable.Range(0, Samples.Length)];

    [Fact]
    public void Family_IsClosed_AndHasElevenKindsWithNamesOfTheirOwn()
    {
        List<Type> leaves = [.. typeof(Terminus.Evidence).Assembly.GetTypes().Where(t => t is { IsAbstract: false } && t.IsSubclassOf(typeof(Terminus.Evidence)))];
        Assert.Equal(11, leaves.Count);
        Assert.All(leaves, leaf => Assert.True(leaf.IsSealed));
        Assert.Equal(leaves.OrderBy(l => l.Name, StringComparer.Ordinal), Samples.Select(s => s().GetType()).OrderBy(l => l.Name, StringComparer.Ordinal));
        Assert.Equal(leaves.Count, Samples.Select(s => s().Kind).Distinct().Count());
    }

    // The names that results carry.
    [Fact]
    public void Kind_OfEachKind_IsItsNameInDocuments()
        => Assert.Equal(
            [
                "patent-issued", "patent-pending", "right-registered", "feature-seen", "mark-in-use", "subject-shown",
                "date-inscribed", "known-by", "maker-active", "model-advertised", "opinion",
            ],
            Samples.Select(sample => sample().Kind));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Equals_SameContent_IsTrueWithTheSameHash(int kind)
    {
        Terminus.Evidence one = Samples[kind]();
        Terminus.Evidence other = Samples[kind]();
        Assert.Equal(one, other);
        Assert.Equal(one.GetHashCode(), other.GetHashCode());
        Assert.Equal(one.ToString(), other.ToString());
    }

    // Among a thousand hashes of 32 bits two are the same once in ten thousand times; one field alone must tell the items apart.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void GetHashCode_ItemsThatDifferInOneCommonField_AreSpread(int kind)
    {
        Terminus.Evidence item = Samples[kind]();
        Assert.InRange(Hashes(i => item with { Part = "part " + i }), 990, 1000);
        Assert.InRange(Hashes(i => item with { Source = "source " + i }), 990, 1000);
        Assert.InRange(Hashes(i => item with { Entries = ["entry " + i] }), 990, 1000);
        Assert.InRange(Hashes(i => item with { Reasons = [new Reason("rule " + i)] }), 990, 1000);

        static int Hashes(Func<int, Terminus.Evidence> itemOf) => Enumerable.Range(0, 1000).Select(i => itemOf(i).GetHashCode()).Distinct().Count();
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Equals_CommonFieldDiffers_IsFalse(int kind)
    {
        Terminus.Evidence item = Samples[kind]();
        Assert.NotEqual(item, item with { Part = "back" });
        Assert.NotEqual(item, item with { Part = null });
        Assert.NotEqual(item, item with { Source = "heard" });
        Assert.NotEqual(item, item with { Entries = ["a", "b"] });
        Assert.NotEqual(item, item with { Reasons = [new Reason("r", "n", "2")] });
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Equals_AnyFieldOfItsOwnDiffers_IsFalse(int kind)
    {
        foreach (var property in Samples[kind]().GetType().GetProperties().Where(p => p.CanWrite))
        {
            Terminus.Evidence changed = Samples[kind]();
            property.SetValue(changed, Other(property.PropertyType));
            Assert.True(!changed.Equals(Samples[kind]()), property.Name);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void StatedWindows_AnySample_AreNestedAndNeverRise(int kind)
        => Assert.True(NestedWindows.AreNested(Samples[kind]().StatedWindows()));

    private static EvidenceDate Day() => EvidenceDate.Parse("1961-07-11");

    private static object Other(Type type) => type switch
    {
        _ when type == typeof(string) => "other",
        _ when type == typeof(bool) => false,
        _ when type == typeof(int?) => 3,
        _ when type == typeof(EvidenceDate) => EvidenceDate.Parse("1961-07-11?"),
        _ when type == typeof(IReadOnlyList<string>) => new[] { "other" },
        _ when type == typeof(IReadOnlyList<Reason>) => new[] { new Reason("other") },
        _ when type == typeof(IReadOnlyList<StatedWindow>) => new[] { new StatedWindow(DateWindow.InYear(1962), 0.9) },
        _ => Enum.ToObject(Nullable.GetUnderlyingType(type) ?? type, 0),
    };

    [Fact]
    public void StatedWindows_AskedBefore_AreThoseOfTheItemAndTheAssumptionsAskedFor()
    {
        var known = new KnownBy(EvidenceDate.InYear(1950));
        Assert.Equal(0.99, known.StatedWindows()[0].Confidence);
        Assert.Equal(0.5, known.StatedWindows(Assumptions.House with { KnownUntil = 0.5 })[0].Confidence);
        Assert.Equal(0.99, known.StatedWindows()[0].Confidence);
        Assert.Equal(DateWindow.Until(new NodaTime.LocalDate(1960, 12, 31)), (known with { Date = EvidenceDate.InYear(1960) }).StatedWindows()[0].Window);
    }

    [Fact]
    public void Equals_AfterItsWindowsWereAskedFor_IsAsBefore()
    {
        KnownBy asked = new(EvidenceDate.InYear(1950), "a note");
        asked.StatedWindows();
        Assert.Equal(new KnownBy(EvidenceDate.InYear(1950), "a note"), asked);
        Assert.Equal(new KnownBy(EvidenceDate.InYear(1950), "a note").GetHashCode(), asked.GetHashCode());
        Assert.NotEqual(new KnownBy(EvidenceDate.InYear(1950), "a note", source: "a witness"), asked);
    }
}
