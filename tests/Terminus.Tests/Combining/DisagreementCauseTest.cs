namespace Terminus.Tests.Combining;

/// <summary>What a disagreement usually means: common practice, no source, save the cases that name one.</summary>
public class DisagreementCauseTest
{
    private static readonly NodaTime.LocalDate Today = new(2026, 11, 25);

    [Fact]
    public void NewerCatchOnAnOldBody_IsAReplacedPart()
        => Is(DisagreementCause.ReplacedPart, Usual("1860", "1900", "body"), Came("1936", "catch"));

    [Fact]
    public void TwoFeaturesOfNoNamedPart_AreAReplacedPart()
        => Is(DisagreementCause.ReplacedPart, Usual("1860", "1910"), Came("1936"));

    [Fact]
    public void TwoFeaturesOfOnePart_AreAFormMadeAgain()
        => Is(DisagreementCause.Revival, Usual("1860", "1910", "pin"), Came("1936", "pin"));

    /// <summary>A bangle that copies a buckle bracelet of the 1870s carries a patent of 1933 (giannasgems.blogspot.com, 2010).</summary>
    [Fact]
    public void OldFormWithANewPatent_IsAFormMadeAgain()
        => Is(DisagreementCause.Revival, Usual("1870", "1879"), new PatentIssued(EvidenceDate.Parse("1933")));

    [Fact]
    public void OldFormThatShowsANewSubject_IsAFormMadeAgain_OnWhateverPart()
        => Is(DisagreementCause.Revival, Usual("1865", "1900", "chain"), new SubjectShown("a ship", EvidenceDate.Parse("1936"), part: "face"));

    [Fact]
    public void PatentsOnTwoParts_AreTwoPiecesPutTogether()
        => Is(
            DisagreementCause.MarriedParts,
            new PatentIssued(EvidenceDate.Parse("1900"), "US", "utility", part: "front"),
            new PatentIssued(EvidenceDate.Parse("1950"), "US", "utility", part: "back"));

    /// <summary>Two dates on one object may be on two parts, 1892 and "applied for" (vintagecorkscrews.com).</summary>
    [Fact]
    public void PendingBesideTheGrant_IsLeftOnTheDie_OnWhateverPart()
        => Is(
            DisagreementCause.PendingLeftOn,
            new PatentPending(EvidenceDate.Parse("1890"), EvidenceDate.Parse("1892"), part: "handle"),
            new PatentIssued(EvidenceDate.Parse("1901"), part: "shaft"));

    [Fact]
    public void PendingBesideALaterForm_IsLeftOnTheDie()
        => Is(DisagreementCause.PendingLeftOn, new PatentPending(EvidenceDate.Parse("1949"), EvidenceDate.Parse("1955")), Came("1961"));

    /// <summary>A tool bought about 1995 carries numbers of 1924, 1927 and 1929 (patentlibrarian.com, 2010).</summary>
    [Fact]
    public void PatentBesideAMuchLaterPurchase_IsAnOldDie()
        => Is(DisagreementCause.OldDie, new PatentIssued(EvidenceDate.Parse("1929"), "US", "utility"), new KnownBy(EvidenceDate.Parse("1995"), boughtNew: true));

    [Fact]
    public void PatentOfLongBeforeTheForm_IsMisreadOrOfAnotherRight()
        => Is(DisagreementCause.MisreadMark, new PatentIssued(EvidenceDate.Parse("1872"), "US", "utility"), Came("1949"));

    [Fact]
    public void ReceiptBeforeThePatent_IsAMisreadMark()
        => Is(DisagreementCause.MisreadMark, new KnownBy(EvidenceDate.Parse("1920")), new PatentIssued(EvidenceDate.Parse("1950")));

    [Fact]
    public void ReceiptBeforeTheForm_IsOfAnotherPiece()
        => Is(DisagreementCause.RecordOfAnother, new KnownBy(EvidenceDate.Parse("1920")), Came("1950"));

    [Fact]
    public void ReceiptBeforeTheFormOfOnePart_IsAReplacedPart()
        => Is(DisagreementCause.ReplacedPart, new KnownBy(EvidenceDate.Parse("1920")), Came("1950", "catch"));

    [Fact]
    public void FormThatHadGoneWhenBoughtNew_IsOldStock()
        => Is(DisagreementCause.OldStock, Usual("1900", "1920"), new KnownBy(EvidenceDate.Parse("1960"), boughtNew: true));

    [Fact]
    public void PresentationBeforeTheForm_IsAnEngravingOfSomethingElse()
        => Is(DisagreementCause.LaterEngraving, new DateInscribed(EvidenceDate.Parse("1880"), InscriptionPurpose.Presentation), Came("1936"));

    [Fact]
    public void PresentationOnAnotherPartThanTheForm_IsAReplacedPart()
        => Is(DisagreementCause.ReplacedPart, new DateInscribed(EvidenceDate.Parse("1880"), InscriptionPurpose.Presentation, part: "front"), Came("1936", "pin"));

    /// <summary>Links with an anniversary that implies 1914 carry the mark of a firm said to be founded in 1920 (antiquecufflinks.blogspot.com, 2008).</summary>
    [Fact]
    public void AnniversaryBeforeTheFirm_IsTheMakersDates()
        => Is(
            DisagreementCause.MakerDates,
            new DateInscribed(EvidenceDate.Parse("1914"), InscriptionPurpose.Presentation),
            new MakerActive("an invented firm", EvidenceDate.Parse("1920"), EvidenceDate.Parse("1950")));

    [Fact]
    public void OpinionAgainstAnything_HasNoUsualCause()
        => Is(DisagreementCause.Unknown, new Opinion(DateWindow.BetweenYears(1800, 1820), 0.9), Came("1936"));

    private static FeatureSeen Usual(string from, string until, string? part = null)
        => new("an older form", common: EvidenceDate.Parse(from), fading: EvidenceDate.Parse(until), grade: EvidenceGrade.High, part: part);

    private static FeatureSeen Came(string date, string? part = null)
        => new("a newer form", EvidenceDate.Parse(date), basis: EvidenceBasis.Patent, grade: EvidenceGrade.High, part: part);

    // In either order.
    [Fact]
    public void PatentsOfWhichOneIsOnNoNamedPart_AreAnOldDie()
        => Is(
            DisagreementCause.OldDie,
            new PatentIssued(EvidenceDate.Parse("1900"), "US", "utility", part: "front"),
            new PatentIssued(EvidenceDate.Parse("1940"), "US", "utility"));

    [Fact]
    public void FeaturesOfWhichOneIsOnNoNamedPart_AreAReplacedPart()
        => Is(DisagreementCause.ReplacedPart, Usual("1860", "1910", "body"), Came("1936"));

    [Fact]
    public void AnOpinionBesideAMark_HasNoKnownCause()
    {
        Is(DisagreementCause.Unknown, new Opinion(DateWindow.InYear(1900), 0.9), new PatentIssued(EvidenceDate.Parse("1950")));
        Is(DisagreementCause.Unknown, new Opinion(DateWindow.InYear(1950), 0.9), new PatentIssued(EvidenceDate.Parse("1900"), "US", "utility"));
    }

    private static void Is(DisagreementCause cause, Evidence one, Evidence other)
    {
        Assert.Equal(cause, Assert.Single(Dating.Of([one, other], Today).Disagreements).Cause);
        Assert.Equal(cause, Assert.Single(Dating.Of([other, one], Today).Disagreements).Cause);
    }

    // Fifty years, each counted with its leap day, from the last day of the usual window to the first of the form.
    [Theory]
    [InlineData(50 * 366, DisagreementCause.OldDie)]
    [InlineData((50 * 366) + 1, DisagreementCause.MisreadMark)]
    public void PatentOfLongBeforeTheForm_IsAnOldDieForFiftyYears(int days, DisagreementCause cause)
    {
        var patent = new PatentIssued(EvidenceDate.Parse("1900-01-02"), "US", "utility");
        NodaTime.LocalDate usual = patent.StatedWindows()[1].Window.NotAfter!.Value;
        Is(cause, patent, Came(usual.PlusDays(days).ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture)));
    }
}
