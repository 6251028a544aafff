namespace Terminus.Tests.Reports;

public class ReasonTemplateTest
{
    [Theory]
    [InlineData("{n} {n:day|days}.", "1", "1 day.")]
    [InlineData("{n} {n:day|days}.", "2", "2 days.")]
    [InlineData("{n} {n:day|days}.", "11", "11 days.")]
    [InlineData("{n} ends it.", "revival", "Revival ends it.")]
    [InlineData("{n} ends nothing", "revival", "revival ends nothing")]
    [InlineData("From {n}", "1894-04-17", "From 17 April 1894")]
    [InlineData("From {n}", "1894-13-17", "From 1894-13-17")]
    [InlineData("Plain.", "1", "Plain.")]
    [InlineData("No end {n", "1", "No end {n")]
    public void Fill_AValue_StandsInTheWords(string template, string value, string words)
    {
        var text = new TextBuffer();
        new ReasonTemplate(template).Fill(new ReasonDraft(_ => { }).Begin("a.rule").With("n", value), text);
        Assert.Equal(words, text.ToString());
    }
}
