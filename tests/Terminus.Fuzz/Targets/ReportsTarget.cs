using System.Xml;

namespace Terminus.Fuzz.Targets;

/// <summary>The words, records and pages of any piece, and what to look at next.</summary>
internal sealed class ReportsTarget() : FuzzTarget<string[]>(new AllocationLimits(32 * 1024 * 1024, 16 * 1024))
{
    protected override string[] Answer(byte[] input)
    {
        if (PieceDating.Of(Piece.Read(input), FuzzReference.AsOf, FuzzReference.Invented) is not { } dating)
        {
            return [];
        }

        NextSteps next = NextSteps.Of(dating);
        return
        [
            LinkedArt.ToJson(dating), AdviceDocument.ToJson(next), HtmlPage.Of(dating), Timeline.ToSvg(dating), Explanation.Of(dating, steps: true), AdviceText.Of(next),
            Phrasing.ListingLine(dating), Phrasing.BuyerParagraph(dating), Phrasing.MuseumDate(dating).Display,
        ];
    }

    protected override bool AreSame(string[] first, string[] second) => first.AsSpan().SequenceEqual(second);

    protected override void Judge(string[] answer)
    {
        if (answer is not [string record, string advice, string page, string picture, ..])
        {
            return;
        }

        Demand.Json(record);
        Demand.Json(advice);
        Demand.That(page.EndsWith("</html>\n", StringComparison.Ordinal) || page.EndsWith("</html>", StringComparison.Ordinal), "A page is whole.");
        Demand.That(answer.All(text => text.Length > 0), "Every report says something.");
        try
        {
            using var reader = XmlReader.Create(new StringReader(picture));
            while (reader.Read())
            {
            }
        }
        catch (XmlException wrong)
        {
            throw new BrokenLawException("A picture is well-formed XML: " + wrong.Message);
        }
    }
}
