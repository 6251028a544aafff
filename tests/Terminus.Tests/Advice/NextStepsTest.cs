namespace Terminus.Tests.Advice;

public class NextStepsTest
{
    private static readonly NodaTime.LocalDate AsOf = new(2026, 11, 25);

    // Invented: one clean question whose two answers meet on a day, one whose answers never change, one with a single undated answer.
    private const string Invented = """
        { "format": 1, "name": "invented", "version": "1",
          "features": [
            { "id": "x.old", "name": "old form", "gone": "1849", "endedBy": "law", "basis": "law", "grade": "high", "question": "x.form", "source": "invented", "origin": "invented" },
            { "id": "x.new", "name": "new form", "introduced": "1850", "basis": "law", "grade": "high", "question": "x.form", "source": "invented", "origin": "invented" },
            { "id": "x.plain", "name": "plain", "introduced": "1500", "basis": "trade", "question": "x.trim", "source": "invented", "origin": "invented" },
            { "id": "x.fancy", "name": "fancy", "introduced": "1500", "basis": "trade", "question": "x.trim", "source": "invented", "origin": "invented" },
            { "id": "x.any", "name": "any", "basis": "trade", "question": "x.undated", "source": "invented", "origin": "invented" } ],
          "questions": [
            { "id": "x.form", "text": "Which form?", "objects": ["thing"], "origin": "invented" },
            { "id": "x.trim", "text": "Which trim?", "objects": ["thing"], "origin": "invented" },
            { "id": "x.undated", "text": "Any?", "objects": ["thing"], "origin": "invented" } ] }
        """;

    private static readonly ReferenceSet Reference = ReferenceSet.Empty.With(ReferenceFile.Read(Invented).OrThrow());

    /// <summary>Asked for in the trade: fittings date a brooch better than its material does.</summary>
    [Fact]
    public void Of_BroochWithNothingKnown_AsksForCatchAndHingeBeforeMaterial()
    {
        NextSteps advice = NextSteps.Of(PieceDating.Of(new Piece("invented", objectKind: "brooch"), AsOf));
        double catchBits = Bits(advice, "brooch.catch");
        double hingeBits = Bits(advice, "brooch.hinge");
        foreach (string material in new[] { "material.plastic", "material.finish" })
        {
            Assert.True(catchBits > Bits(advice, material), material);
            Assert.True(hingeBits > Bits(advice, material), material);
        }

        Assert.Equal("brooch.catch", advice.Best[0].Id);
        Assert.True(advice.Best[0].ExpectedLikelyWidth < advice.Best[0].LikelyWidth / 2);
        Assert.Contains(catchBits.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture), ReasonText.Of(advice.Best[0].Why), StringComparison.Ordinal);
    }

    /// <summary>By hand: weights 1 and 0.03 or 0.08 beside 0.25 for neither, on an even density of 54786 and 64612 days.</summary>
    [Fact]
    public void Of_CleanQuestion_TellsWhatLindleysSumGives()
    {
        NextStep step = Step("x.form");
        double before = 54786.0 / (54786 + 64612);
        double[][] likelihoods = [[1 / 1.28, 0.03 / 1.28], [0.03 / 1.28, 1 / 1.28], [0.25 / 1.28, 0.25 / 1.28]];
        double expected = likelihoods.Sum(l =>
        {
            double all = (before * l[0]) + ((1 - before) * l[1]);
            return (before * l[0] * Math.Log2(l[0] / all)) + ((1 - before) * l[1] * Math.Log2(l[1] / all));
        });
        Assert.Equal(expected, step.Bits, 1e-9);
        Assert.Equal(1, step.Answers.Sum(a => a.Probability), 1e-12);
        Assert.Equal([null, "x.new", "x.old"], step.Answers.Select(a => a.Id).OrderBy(id => id, StringComparer.Ordinal));
        Assert.Null(step.Answers[^1].Id);
    }

    [Fact]
    public void Of_CleanQuestion_DatesEachAnswerAnew()
    {
        NextStep step = Step("x.form");
        NextAnswer old = step.Answers.Single(a => a.Id == "x.old");
        NextAnswer neither = step.Answers.Single(a => a.Id is null);
        Assert.Equal(new NodaTime.LocalDate(1849, 12, 31), old.Interval!.Window.NotAfter);
        Assert.Equal(DayNumber.Of(1849, 12, 31) - DayNumber.Of(AsOf), old.IntervalMove.EndDays);
        Assert.Equal(new NodaTime.LocalDate(1850, 1, 1), step.Answers.Single(a => a.Id == "x.new").Interval!.Window.NotBefore);
        Assert.False(neither.MovesDate);
    }

    [Fact]
    public void Of_QuestionWhoseAnswersSayTheSame_WouldNotHelp()
    {
        NextSteps advice = Advice();
        Assert.Equal(0, Bits(advice, "x.trim"), 1e-12);
        Assert.Contains(advice.NotHelpful, s => s.Id == "x.trim");
        Assert.DoesNotContain(advice.Best, s => s.Id == "x.trim");
        Assert.DoesNotContain(advice.All, s => s.Id == "x.undated");
        Assert.Equal("advice.no-help", advice.NotHelpful.First(s => s.Id == "x.trim").Why.Rule);
    }

    [Fact]
    public void Of_TwoQuestionsThatTellTheSame_SaysThatTheyAreTied()
    {
        string twice = Invented.Replace("x.form", "y.form", StringComparison.Ordinal)
            .Replace("x.old", "y.old", StringComparison.Ordinal).Replace("x.new", "y.new", StringComparison.Ordinal);
        ReferenceSet both = Reference.With(ReferenceFile.Read(twice).OrThrow());
        NextSteps advice = NextSteps.Of(PieceDating.Of(new Piece("invented", objectKind: "thing"), AsOf, both));
        Assert.Equal(["x.form", "y.form"], advice.Best.Take(2).Select(s => s.Id));
        Assert.All(advice.Best.Take(2), s => Assert.True(s.IsTiedWithBest));
        Assert.Contains(advice.Notes, n => n.Rule == "advice.tie" && n["count"] == "2");
    }

    [Fact]
    public void Of_NothingOpen_SaysSo()
    {
        var piece = new Piece("invented", objectKind: "brick", marks: [new PieceMark("X")]);
        NextSteps advice = NextSteps.Of(PieceDating.Of(piece, AsOf, Reference));
        Assert.Empty(advice.All);
        Assert.Equal("advice.nothing-open", Assert.Single(advice.Notes).Rule);
    }

    [Fact]
    public void Of_TotalConflict_AsksToLookAgainFirst()
    {
        static PieceOpinion Sure(string date) => new([new PieceWindow(EdtfDate.Parse(date), EdtfDate.Parse(date), 1)], by: date);
        NextSteps advice = NextSteps.Of(PieceDating.Of(new Piece("invented", objectKind: "thing", opinions: [Sure("1900"), Sure("1950")]), AsOf, Reference));
        Assert.Equal(["advice.look-again", "advice.no-spread"], advice.Notes.Select(n => n.Rule));
        Assert.Empty(advice.Best);
    }

    [Fact]
    public void Of_AnswerAgainstWhatIsKnown_ShowsItsConflict()
    {
        var piece = new Piece("invented", objectKind: "thing", records: [new PieceRecord(EdtfDate.Parse("1800"), "an invented receipt")]);
        NextStep step = NextSteps.Of(PieceDating.Of(piece, AsOf, Reference)).All.Single(s => s.Id == "x.form");
        NextAnswer impossible = step.Answers.Single(a => a.Id == "x.new");
        Assert.Equal(0.99 * 0.97, impossible.Conflict, 1e-12);
        Assert.True(impossible.Probability < 0.05);
    }

    [Fact]
    public void Words_EveryRuleOfAdvice_HasATemplate()
    {
        NextSteps advice = NextSteps.Of(PieceDating.Of(new Piece("invented"), AsOf));
        IEnumerable<Reason> reasons = advice.Notes.Concat(advice.All.SelectMany(s => s.Answers.Select(a => a.Answer).Append(s.Question).Append(s.Why)));
        Assert.All(reasons, r => Assert.Contains(r.Rule, ReasonText.Rules));
    }

    private static NextSteps Advice() => NextSteps.Of(PieceDating.Of(new Piece("invented", objectKind: "thing"), AsOf, Reference));

    private static NextStep Step(string id) => Advice().All.Single(s => s.Id == id);

    private static double Bits(NextSteps advice, string id) => advice.All.Single(s => s.Id == id).Bits;

    [Fact]
    public void ToString_OfAStepAndItsAnswers_NamesThem()
    {
        NextStep step = Step("x.form");
        Assert.Equal("x.form: " + step.Bits.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture) + " bits", step.ToString());

        // By hand as above: (0.459 + 0.541 x 0.03) / 1.28, (0.459 x 0.03 + 0.541) / 1.28 and 0.25 / 1.28.
        Assert.Equal(
            ["x.old (0.37): ../1849-12-31 (0.9)", "x.new (0.43): 1850-01-01/.. (0.9)", "none of these (0.2): any date (0.9)"],
            new[] { "x.old", "x.new", null }.Select(id => step.Answers.Single(a => a.Id == id).ToString()));
    }

    [Fact]
    public void ToString_OfAStepOnAPart_NamesThePart()
    {
        ReferenceSet onPart = ReferenceSet.Empty.With(ReferenceFile.Read(
            Invented.Replace("\"text\": \"Which form?\"", "\"text\": \"Which form?\", \"part\": \"lid\"", StringComparison.Ordinal)).OrThrow());
        NextStep step = NextSteps.Of(PieceDating.Of(new Piece("invented", objectKind: "thing"), AsOf, onPart)).All.Single(s => s.Id == "x.form");
        Assert.Equal("lid", step.Part);
        Assert.StartsWith("x.form [lid]: ", step.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NoQuestionThatHelps_SaysSo()
    {
        ReferenceSet trimOnly = ReferenceSet.Empty.With(ReferenceFile.Read(Invented.Replace("[\"thing\"], \"origin\"", "[\"other\"], \"origin\"", StringComparison.Ordinal)
            .Replace("\"Which trim?\", \"objects\": [\"other\"]", "\"Which trim?\", \"objects\": [\"thing\"]", StringComparison.Ordinal)).OrThrow());
        NextSteps advice = NextSteps.Of(PieceDating.Of(new Piece("invented", objectKind: "thing", marks: [new PieceMark("X")]), AsOf, trimOnly));
        Assert.Equal("x.trim", Assert.Single(advice.All).Id);
        Assert.Equal("advice.nothing-helps", Assert.Single(advice.Notes).Rule);
    }

    [Fact]
    public void Of_Null_ThrowsWithTheName() => Assert.Equal("dating", Assert.Throws<ArgumentNullException>(() => NextSteps.Of(null!)).ParamName);

    // Said as in the statement, from a mass of 0.4: 0.8 times the other's confidence.
    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0.49, false)]
    public void Of_ADisagreementThatIsSaid_AsksToLookAgainAtBoth(double confidence, bool asked)
    {
        static PieceOpinion Of(string date, double confidence) => new([new PieceWindow(EdtfDate.Parse(date), EdtfDate.Parse(date), confidence)], by: date);
        NextSteps advice = NextSteps.Of(PieceDating.Of(
            new Piece("invented", objectKind: "thing", opinions: [Of("1700/2000", 0.5), Of("1900", 0.8), Of("1950", confidence)]), AsOf, Reference));
        Assert.Equal(asked ? [("2", "3")] : [], advice.Notes.Where(n => n.Rule == "advice.look-again").Select(n => (n["first"], n["second"])));
    }
}
