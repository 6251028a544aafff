using FsCheck.Xunit;

namespace Terminus.Tests.Reference;

public class ReferenceCheckTest
{
    [Fact]
    public void Run_BuiltInReference_FindsNothing()
    {
        Assert.Empty(ReferenceCheck.Run(BuiltInReference.Load(), ReferenceSet.Empty));
        Assert.Empty(ReferenceCheck.Run(ReferenceSet.BuiltIn));
    }

    [Property(MaxTest = 300, Arbitrary = [typeof(Gens)])]
    public void BreakingOneEntryOfTheBuiltInReferenceGivesExactlyThatFindingWithItsPlace(BrokenReference broken)
    {
        ReferenceFinding finding = Assert.Single(ReferenceCheck.Run(broken.File, ReferenceSet.Empty));
        Assert.Equal((broken.Rule, broken.Id, broken.Path), (finding.Rule, finding.Id, finding.Path));
        Assert.StartsWith("reference/", finding.File, StringComparison.Ordinal);
        Assert.True(finding.Line > 1);
        Assert.DoesNotContain("{", ReasonText.Of(finding.Reason), StringComparison.Ordinal);
        Assert.NotEqual(finding.Reason.ToString(), ReasonText.Of(finding.Reason));
    }

    [Fact]
    public void Run_MarkUsedBeforeItsMaker_IsFound()
    {
        ReferenceFinding finding = Assert.Single(Run("\"from\": \"1921\", \"until\": \"1964\"", "\"from\": \"1919\", \"until\": \"1964\""));
        Assert.Equal(("reference.mark-before-maker", "$.marks[0].from", 25), (finding.Rule, finding.Path, finding.Line));
    }

    [Theory]
    [InlineData("\"until\": \"1965\",\n", "\"until\": \"1919\",\n", "$.makers[0].until", "reference.order")]
    [InlineData("\"from\": \"1931\", \"until\": \"1965\"", "\"from\": \"1971\", \"until\": \"1965\"", "$.makers[0].forms[0].until", "reference.order")]
    [InlineData("\"until\": \"1964\"", "\"until\": \"1902\"", "$.marks[0].until", "reference.order")]
    [InlineData("\"feature\": \"cuff.tumbler\"", "\"feature\": \"cuff.tumbled\"", "$.adverts[0].feature", "reference.unknown-id")]
    [InlineData("\"maker\": \"larkfield\", \"source\"", "\"maker\": \"larkfeld\", \"source\"", "$.adverts[0].maker", "reference.unknown-id")]
    public void Run_OtherKindsBroken_IsFoundWithItsPath(string sound, string broken, string path, string rule)
    {
        ReferenceFinding finding = Assert.Single(Run(sound, broken));
        Assert.Equal((rule, path, "quay.json"), (finding.Rule, finding.Path, finding.File));
    }

    // The years are made up. House defaults take "about" as five years on either side.
    [Theory]
    [InlineData("1909", "1910~", false)]
    [InlineData("191X", "1910~", true)] // 1919 against 1915
    [InlineData("1905/1915", "1910~", false)]
    [InlineData("1905/1916", "1910~", true)]
    [InlineData("1915~", "1915~", false)]
    [InlineData("1915~", "1919", true)] // 1920 against 1919
    [InlineData("1905/..", "1910", false)]
    [InlineData("1916", "1910/..", false)]
    public void Run_UsageThatOutlastsItsEnd_IsFound(string fading, string gone, bool isFound)
    {
        var feature = new FeatureEntry("my.feature", "mine", fading: EdtfDate.Parse(fading), gone: EdtfDate.Parse(gone));
        IReadOnlyList<ReferenceFinding> findings = ReferenceCheck.Run(new ReferenceFile("mine", "1", features: [feature]));
        Assert.Equal(isFound ? ["reference.fades-after-gone .fading"] : [], findings.Select(f => f.Rule + " " + f.Path));
    }

    [Fact]
    public void Run_FileOverTheBuiltInReference_MayReferToIt()
    {
        string builtIn = ReferenceSet.BuiltIn.Questions[0].Id;
        var file = new ReferenceFile("mine", "1", features: [new FeatureEntry("my.feature", "mine", question: builtIn)]);
        Assert.Empty(ReferenceCheck.Run(file));
        Assert.Equal("reference.unknown-id", Assert.Single(ReferenceCheck.Run(file, ReferenceSet.Empty)).Rule);
    }

    private static IReadOnlyList<ReferenceFinding> Run(string sound, string broken)
    {
        string json = ReferenceFileTest.Whole.Replace("\r", "", StringComparison.Ordinal);
        Assert.Empty(ReferenceCheck.Run(ReferenceFile.Read(json, "quay.json").OrThrow()));
        Assert.Contains(sound, json, StringComparison.Ordinal);
        return ReferenceCheck.Run(ReferenceFile.Read(json.Replace(sound, broken, StringComparison.Ordinal), "quay.json").OrThrow());
    }
}
