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
}
