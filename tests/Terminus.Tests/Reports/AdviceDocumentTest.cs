using System.Text.Json;

namespace Terminus.Tests.Reports;

public class AdviceDocumentTest
{
    private static readonly NextSteps Advice
        = NextSteps.Of(PieceDating.Of(new Piece("invented", objectKind: "brooch", features: [new PieceFeature("brooch.c_catch", "catch")]), new(2026, 11, 25)));

    [Fact]
    public void ToJson_Steps_AreThoseOfTheAdvice()
    {
        JsonElement json = JsonDocument.Parse(AdviceDocument.ToJson(Advice)).RootElement;
        Assert.Equal(("invented", "2026-11-25"), (json.GetProperty("id").GetString(), json.GetProperty("asOf").GetString()));
        Assert.Equal(Advice.All.Select(s => s.Id), json.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("question").GetString()));
        JsonElement first = json.GetProperty("steps")[0];
        Assert.Equal(Advice.All[0].Bits, first.GetProperty("bits").GetDouble(), 1e-12);
        Assert.Equal(Advice.All[0].ExpectedWidth, first.GetProperty("interval").GetProperty("expected").GetDouble(), 1e-9);
        foreach ((string name, double now, double expected) in new[]
        {
            ("spread", Advice.All[0].SpreadWidth, Advice.All[0].ExpectedSpreadWidth), ("interval", Advice.All[0].Width, Advice.All[0].ExpectedWidth),
            ("likely", Advice.All[0].LikelyWidth, Advice.All[0].ExpectedLikelyWidth),
        })
        {
            Assert.Equal(now, first.GetProperty(name).GetProperty("now").GetDouble(), 1e-9);
            Assert.Equal(expected, first.GetProperty(name).GetProperty("expected").GetDouble(), 1e-9);
        }

        Assert.Equal(Advice.Entropy, json.GetProperty("entropy").GetDouble(), 1e-9);
        foreach ((NextAnswer answer, JsonElement written) in Advice.All[0].Answers.Zip(first.GetProperty("answers").EnumerateArray()))
        {
            Assert.Equal(answer.IntervalMove.StartDays, Days(written, "startMoves"));
            Assert.Equal(answer.IntervalMove.EndDays, Days(written, "endMoves"));
        }

        Assert.Equal(Advice.All[0].Answers.Select(a => a.Id), first.GetProperty("answers").EnumerateArray().Select(a => a.GetProperty("answer").GetString()));
        Assert.Equal(Advice.Notes.Select(n => n.Rule), json.GetProperty("notes").EnumerateArray().Select(n => n.GetProperty("rule").GetString()));
        Assert.Equal((Advice.Best.Count, 1), (json.GetProperty("best").GetInt32(), json.GetProperty("format").GetInt32()));
        Assert.Equal(Advice.All.Select(s => s.Helps), json.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("helps").GetBoolean()));
        Assert.Equal(1, first.GetProperty("answers").EnumerateArray().Sum(a => a.GetProperty("probability").GetDouble()), 1e-9);
        Assert.Equal("unseen.feature-seen", json.GetProperty("unseen")[0].GetProperty("rule").GetString());
    }

    [Fact]
    public void Text_AnswerThatMovesTheDate_SaysWhichEndAndHowFar()
    {
        string text = AdviceText.Of(Advice);
        Assert.Contains("years earlier)", text, StringComparison.Ordinal);
        Assert.Contains("What cannot be seen", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Which catch holds the pin?", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 100, line));
    }

    [Fact]
    public void Null_ThrowsWithTheName()
    {
        Assert.Equal("advice", Assert.Throws<ArgumentNullException>(() => AdviceDocument.ToJson(null!)).ParamName);
        Assert.Equal("advice", Assert.Throws<ArgumentNullException>(() => AdviceText.Of(null!)).ParamName);
    }

    private static int? Days(JsonElement answer, string member)
        => answer.GetProperty("interval").GetProperty(member) is { ValueKind: JsonValueKind.Number } days ? days.GetInt32() : null;
}
