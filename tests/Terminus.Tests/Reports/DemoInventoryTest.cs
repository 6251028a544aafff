using NodaTime;

namespace Terminus.Tests.Reports;

/// <summary>
/// All that is said of the invented demo inventory, against approved texts. That it is right is for the other tests to say; these show, word
/// for word, what a change changes. Where one differs, the text of now is left beside it: read the difference, then move it over.
/// </summary>
public class DemoInventoryTest
{
    private static readonly LocalDate AsOf = new(2026, 11, 25);

    private static readonly ReferenceSet Reference = ReferenceSet.BuiltIn.With(ReferenceFile.Read(Bytes("reference.json"), "reference.json").OrThrow());

    private static readonly IReadOnlyList<PieceDating> All =
        [.. Piece.ReadAll(Bytes("inventory.json"), "inventory.json").Select(read => PieceDating.Of(read, AsOf, Reference)!)];

    [Fact]
    public void Words_OfEveryPiece_AreTheApprovedText()
        => Check("words.txt", Each(dating => string.Join("\n", Phrasing.ListingLine(dating), Phrasing.BuyerParagraph(dating), Phrasing.MuseumDate(dating), Explanation.Of(dating, steps: true))));

    [Fact]
    public void Results_OfEveryPiece_AreTheApprovedText() => Check("results.json", Each(dating => ResultDocument.ToJson(dating, steps: true)));

    [Fact]
    public void Records_OfEveryPiece_AreTheApprovedText() => Check("records.json", Each(dating => LinkedArt.ToJson(dating, "https://example.org/" + dating.Piece.Id)));

    [Fact]
    public void Advice_OnEveryPiece_IsTheApprovedText()
        => Check("advice.txt", Each(dating => AdviceText.Of(NextSteps.Of(dating))));

    [Fact]
    public void Page_OfOnePiece_IsTheApprovedText() => Check("page.html", HtmlPage.Of(All.Single(dating => dating.Piece.Id == "QH-014")));

    [Fact]
    public void Page_OfAllPieces_IsTheApprovedText() => Check("inventory.html", HtmlPage.Of(All, ["QH-000: not read"]));

    [Fact]
    public void Changes_WithTheReferenceOfTheInventory_AreTheApprovedText()
    {
        List<ChangesPiece> changes = [.. Changes.UnderReferences(All.Select(dating => dating.Piece), AsOf, ReferenceSet.BuiltIn, Reference)];
        Check("changes.txt", string.Join("\n", ChangesText.Of(changes)) + "\n" + ChangesDocument.ToJson(changes));
    }

    private static string Each(Func<PieceDating, string> say)
        => string.Concat(All.Select(dating => "== " + dating.Piece.Id + "\n" + say(dating).ReplaceLineEndings("\n").TrimEnd('\n') + "\n"));

    private static void Check(string name, string text) => ApprovedText.Check(text.ReplaceLineEndings("\n"), "tests", "Terminus.Tests", "Reports", "Approved", "demo-" + name);

    private static byte[] Bytes(string name) => File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "demo", name));
}
