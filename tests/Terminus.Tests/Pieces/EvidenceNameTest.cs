namespace Terminus.Tests.Pieces;

public class EvidenceNameTest
{
    private static readonly EvidenceDate Year = EvidenceDate.InYear(1961);

    /// <summary>An item of each kind, what it speaks of, and what it is called in a sentence.</summary>
    public static TheoryData<Evidence, string, string> Names => new()
    {
        { new PatentIssued(Year, "US", "utility", "2999999"), "US utility patent 2999999", "the patent mark 2999999" },
        { new PatentIssued(Year, part: "back"), "a patent", "the patent mark on the back" },
        { new PatentPending(office: "DE", right: "utility-model", number: "171230"), "DE utility model 171230", "the pending mark 171230" },
        { new PatentPending(), "a patent", "the pending mark" },
        { new RightRegistered(Year, number: "12345"), "12345", "the registration mark 12345" },
        { new RightRegistered(Year), "a registered right", "the registration mark" },
        { new FeatureSeen("t.snap", part: "pin"), "snap", "the feature snap on the pin" },
        { new FeatureSeen("t.snap", entries: ["t.snap"]), "snap", "the feature snap" },
        { new FeatureSeen("own.form"), "own.form", "the feature own.form" },
        { new FeatureSeen("own.form", entries: ["own.form"]), "own.form", "the feature own.form" },
        { new FeatureSeen("own", entries: ["t.hook", "t.nobody", "t.catch"]), "open hook or rolling catch", "the feature open hook or rolling catch" },
        { new FeatureSeen("own", entries: ["t.nobody", "t.noone"]), "own", "the feature own" },
        { new MarkInUse("t.mark"), "\"MADE IN TARN\"", "the wording \"MADE IN TARN\"" },
        { new MarkInUse("mk.made_in_usa"), "MADE IN U.S.A.", "the wording MADE IN U.S.A." },
        { new MarkInUse("mk.us_origin"), "(a country's name)", "the wording (a country's name)" },
        { new MarkInUse("own.wording"), "own.wording", "the wording own.wording" },
        { new SubjectShown("sub.kite", Year, entries: ["sub.kite"]), "a kite ship", "the subject a kite ship" },
        { new SubjectShown("t.mark", Year, entries: ["t.mark"]), "MADE IN TARN", "the subject MADE IN TARN" },
        { new DateInscribed(Year), "date-inscribed", "the inscribed date" },
        { new KnownBy(Year, "a receipt"), "a receipt", "a receipt" },
        { new KnownBy(Year, part: "box"), "the record", "the record on the box" },
        { new MakerActive("t.maker"), "Tarn & Oake", "the maker Tarn & Oake" },
        { new MakerActive("nobody"), "nobody", "the maker nobody" },
        { new ModelAdvertised(Year, what: "a trade list"), "a trade list", "the advertisements" },
        { new ModelAdvertised(Year), "advertisements", "the advertisements" },
        { new Opinion([], by: "a dealer", label: "style"), "the opinion of a dealer", "the opinion of a dealer" },
        { new Opinion([], label: "style"), "the opinion \"style\"", "the opinion \"style\"" },
        { new Opinion(DateWindow.BetweenYears(1950, 1960), 0.5), "the unsigned opinion for 1950–1960", "the unsigned opinion for 1950–1960" },
        { new Opinion([]), "the unsigned opinion", "the unsigned opinion" },
    };

    private static ReferenceSet Reference { get; } = InventedReference.Set.With(new ReferenceFile(
        "own", "1.0.0", marks: [new MarkEntry("t.mark", "MADE IN TARN")]));

    [Theory]
    [MemberData(nameof(Names))]
    public void Of_ItemOfEachKind_IsCalledByItsName(Evidence item, string thing, string name)
    {
        Assert.Equal(thing, EvidenceName.Thing(item, Reference));
        Assert.Equal(name, EvidenceName.Of(item, Reference));
    }

    [Theory]
    [InlineData(null, null, "a patent")]
    [InlineData("US", null, "a US patent")]
    [InlineData("US", "utility", "a US utility patent")]
    [InlineData("US", "plant", "a US plant patent")]
    [InlineData("US", "reissue", "a US reissue patent")]
    [InlineData(null, "design", "a design patent")]
    [InlineData("FR", "patent", "an FR patent")]
    [InlineData("DE", "utility-model", "a DE utility model")]
    public void Thing_ARightWithoutANumber_IsSpeltOut(string? office, string? right, string name)
        => Assert.Equal(name, EvidenceName.Thing(new PatentIssued(EvidenceDate.InYear(1961), office, right), ReferenceSet.BuiltIn));

    // The names of the letters that begin with the sound of a vowel: a, e, eff, aitch, i, ell, em, en, o, ar, ess, ex.
    [Fact]
    public void Thing_OfficeSaidLetterByLetter_HasTheArticleOfItsFirstLetter()
    {
        foreach (char letter in "ABCDEFGHIJKLMNOPQRSTUVWXYZ")
        {
            string article = "AEFHILMNORSX".Contains(letter, StringComparison.Ordinal) ? "an " : "a ";
            Assert.Equal(article + letter + "Q patent", EvidenceName.Thing(new PatentIssued(Year, letter + "Q"), ReferenceSet.Empty));
        }
    }

    [Theory]
    [InlineData("US", "utility", "US utility patent 2999999")]
    [InlineData("GB", "patent", "GB patent 2999999")]
    [InlineData("GB", "registered-design", "GB registered design 2999999")]
    [InlineData("US", null, "US 2999999")]
    public void Thing_ANumberedRight_IsItsOfficeRightAndNumber(string office, string? right, string name)
        => Assert.Equal(name, EvidenceName.Thing(new PatentIssued(EvidenceDate.InYear(1961), office, right, "2999999"), ReferenceSet.BuiltIn));

    [Theory]
    [InlineData("mk.made_in_usa", "MADE IN U.S.A.")]
    [InlineData("mk.us_origin", "(a country's name)")]
    [InlineData("own.wording", "own.wording")]
    public void Thing_AWording_IsCalledByItsWords(string id, string name)
        => Assert.Equal(name, EvidenceName.Thing(new MarkInUse(id), ReferenceSet.Empty));

    [Fact]
    public void Wordings_EachHasAName()
        => Assert.All(Lexicon.BuiltIn.Wordings, w => Assert.NotEqual("", w.Name));
}
