namespace Terminus.Tests.Reports;

/// <summary>What each kind of evidence is said to show: its dates in a sentence, and its years in a listing line.</summary>
public class EvidenceReasonsTest
{
    private static readonly EvidenceDate Filed = EvidenceDate.Parse("1956-03-06");

    private static readonly EvidenceDate Issued = EvidenceDate.Parse("1961-07-11");

    /// <summary>An item, its sentence, and its words in a line.</summary>
    public static TheoryData<Evidence, string, string> Said => new()
    {
        {
            new PatentIssued(Issued, "US", "utility", "2999999", entries: ["US utility 2999999"]),
            "Bears US utility patent 2999999, issued 11 July 1961: a piece that bears a patent is not older than its issue.",
            "cuff fastening patent granted 1961"
        },
        {
            new PatentIssued(EvidenceDate.Parse("1961~")),
            "Bears a patent, issued about 1961: a piece that bears a patent is not older than its issue.",
            "patent granted circa 1961"
        },
        {
            new PatentPending(Filed, Issued),
            "Marked as applied for: a patent, filed 6 March 1956, issued 11 July 1961. The words fit the time between the two.",
            "patent applied for 1956, granted 1961"
        },
        {
            new PatentPending(filed: Filed),
            "Marked as applied for: a patent, filed 6 March 1956, issued unknown. The words fit the time between the two.",
            "patent applied for 1956"
        },
        {
            new PatentPending(issued: Issued),
            "Marked as applied for: a patent, filed unknown, issued 11 July 1961. The words fit the time between the two.",
            "marked as applied for, patent granted 1961"
        },
        { new PatentPending(), "Marked as applied for, with no patent known: the words carry no date of their own.", "marked as applied for" },
        {
            new RightRegistered(EvidenceDate.Parse("1907"), "GB", "registered-design"),
            "Bears a GB registered design, registered 1907: not older than its registration.",
            "registered design of 1907"
        },
        { new RightRegistered(EvidenceDate.Parse("1907?")), "Bears a registered right, registered 1907 (uncertain): not older than its registration.", "right of 1907" },
        {
            new FeatureSeen("f", Year(1930), Year(1932), Year(1938), Year(1941), EvidenceBasis.Patent, entries: ["cuff.tumbler"]),
            "Shows tumbler back: introduced 1930, common from 1932, fading from 1938, gone by 1941; by a patent.",
            "tumbler back (1932–1938)"
        },
        { new FeatureSeen("f", introduced: Year(1930), basis: EvidenceBasis.Law), "Shows f: introduced 1930; by law.", "f (1930 or later)" },
        { new FeatureSeen("f", common: EvidenceDate.Parse("193X"), basis: EvidenceBasis.Event), "Shows f: common from 1930–1939; by an event.", "f (1930 or later)" },
        { new FeatureSeen("f", fading: Year(1938)), "Shows f: fading from 1938; by usage of the trade.", "f (1938 or earlier)" },
        { new FeatureSeen("f", gone: Year(1941)), "Shows f: gone by 1941; by usage of the trade.", "f (1941 or earlier)" },
        { new FeatureSeen("f"), "F: no date is known for it, so it says nothing.", "f (no date known)" },
        { new MarkInUse("w", Year(1900), Year(1910), byLaw: true), "Bears the wording w, in use from 1900 to 1910 by law.", "marked w (1900–1910)" },
        { new MarkInUse("w", from: Year(1900)), "Bears the wording w, in use from 1900 by custom.", "marked w (1900 or later)" },
        { new MarkInUse("w", until: Year(1910)), "Bears the wording w, in use until 1910 by custom.", "marked w (1910 or earlier)" },
        { new SubjectShown("s", Issued), "Depicts s, which first existed 11 July 1961: not older than that.", "shows s, known from 1961" },
        {
            new DateInscribed(Issued, InscriptionPurpose.Presentation),
            "Carries the date of a presentation, 11 July 1961: made by then, and seldom long before.",
            "inscribed 1961"
        },
        {
            new DateInscribed(Issued, InscriptionPurpose.Commemorative),
            "Carries the date of an event, 11 July 1961: usually made by then, though old dates are put on new pieces.",
            "inscribed 1961"
        },
        { new DateInscribed(Year(1889), InscriptionPurpose.Since), "\"Since 1889\" is a firm's age and says nothing of the piece.", "inscribed 1889" },
        { new KnownBy(Issued, "a receipt"), "Known by a receipt of 11 July 1961: made by then.", "a receipt of 1961" },
        { new KnownBy(Issued, "a receipt", boughtNew: true), "Known by a receipt of 11 July 1961, when it was sold as new: made in the years before.", "a receipt of 1961" },
        { new MakerActive("ostrell", Year(1946), Year(1968)), "Names Ostrell-Vane, active from 1946 to 1968.", "Ostrell-Vane, active 1946–1968" },
        { new MakerActive("m", from: Year(1946)), "Names m, active from 1946.", "m, active 1946 or later" },
        { new MakerActive("m", until: Year(1968)), "Names m, active until 1968.", "m, active 1968 or earlier" },
        { new MakerActive("m"), "Names m, active at a time not known.", "m, active at a time not known" },
        { new ModelAdvertised(Year(1955), what: "a list"), "The same model is advertised 1955 (a list).", "model advertised 1955" },
        { new ModelAdvertised(Year(1955), Year(1957)), "The same model is advertised 1955 to 1957 (advertisements).", "model advertised 1955–1957" },
        {
            new Opinion(DateWindow.Between(new(1950, 5, 1), new(1960, 6, 30)), 0.5, "a dealer"),
            "The opinion of a dealer: 1 May 1950 to 30 June 1960.",
            "the opinion of a dealer"
        },
        { new Opinion([], "a dealer"), "The opinion of a dealer, with no window of its own left.", "the opinion of a dealer" },
    };

    [Theory]
    [MemberData(nameof(Said))]
    public void Main_ItemOfEachKind_GivesItsDates(Evidence item, string sentence, string line)
    {
        Assert.Equal(sentence, ReasonText.Of(EvidenceReasons.Main(item, Samples.Reference)));
        Assert.Equal(line, ReasonText.Of(BriefReasons.Of(item, Samples.Undated)));
    }

    [Fact]
    public void Of_ItemWithReasons_GivesItsSentenceAndThenEachOfThemOnce()
    {
        var other = new Reason("pieces.same-entry", "what", "f", "part", "pin");
        KnownBy item = new(Issued, "a receipt");
        Reason main = EvidenceReasons.Main(item, Samples.Reference);
        Assert.Equal([main, other], EvidenceReasons.Of(item with { Reasons = [other, main] }, Samples.Reference));
        Assert.Equal([main, new Reason(main.Rule, "what", "b")], EvidenceReasons.Of(item with { Reasons = [new Reason(main.Rule, "what", "b")] }, Samples.Reference));
    }

    [Fact]
    public void Of_FeatureThatIsAbsent_SaysThatFirstAndNothingOfItsDates()
    {
        var absent = new Reason("pieces.feature-absent", "feature", "f");
        FeatureSeen item = new("f", reasons: [new Reason("pieces.same-entry"), absent]);
        Assert.Equal(absent, EvidenceReasons.Main(item, Samples.Reference));
        Assert.Equal(["pieces.feature-absent", "pieces.same-entry"], EvidenceReasons.Of(item, Samples.Reference).Select(r => r.Rule));
    }

    private static EvidenceDate Year(int year) => EvidenceDate.InYear(year);
}
