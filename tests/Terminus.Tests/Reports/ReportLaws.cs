using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml;
using FsCheck.Xunit;

namespace Terminus.Tests.Reports;

/// <summary>What holds for the words, records and pictures of any piece.</summary>
[Properties(Arbitrary = [typeof(Gens)], MaxTest = 100)]
public partial class ReportLaws
{
    [Property]
    public void Every_picture_and_page_is_well_formed(Piece one, Piece other)
    {
        PieceDating[] both = [Date(one), Date(other)];
        Assert.All(
            (string[])[Timeline.ToSvg(both[0]), Timeline.ToSvg(both), HtmlPage.Of(both[0]), HtmlPage.Of(both)],
            document =>
            {
                using var reader = XmlReader.Create(new StringReader(document), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
                while (reader.Read())
                {
                }
            });
    }

    [Property]
    public void Every_record_is_json_and_has_a_named_time_span(Piece piece)
    {
        JsonElement span = JsonDocument.Parse(LinkedArt.ToJson(Date(piece))).RootElement.GetProperty("produced_by").GetProperty("timespan");
        Assert.NotEmpty(span.GetProperty("identified_by")[0].GetProperty("content").GetString()!);
    }

    [Property]
    public void The_years_to_search_by_are_in_order(Piece piece)
    {
        MuseumDate date = Phrasing.MuseumDate(Date(piece));
        Assert.True(date.EarliestYear is not { } earliest || earliest <= date.LatestYear);
        Assert.NotEmpty(date.Display);
    }

    [Property]
    public void Every_reason_has_a_text_and_every_parameter_that_the_text_asks_for(Piece piece)
    {
        PieceDating dating = Date(piece);
        IEnumerable<Reason> reasons = Statement.Reasons(dating).Concat(Statement.WhyReasons(dating)).Concat(Phrasing.Remarks(dating)).Concat(Phrasing.Cautions(dating))
            .Concat(dating.Dating.Evidence.Concat(dating.LeftOut).SelectMany(e => EvidenceReasons.Of(e, dating.Reference)))
            .Concat(dating.Dating.Evidence.Select(e => BriefReasons.Of(e, dating)))
            .Concat(dating.Dating.Disagreements.Select(d => Statement.OfDisagreement(dating, d)));
        Assert.All(reasons, reason => Assert.All(
            Parameter().Matches(ReasonText.TemplateOf(reason.Rule)).Select(m => m.Groups[1].Value), name => Assert.NotNull(reason[name])));
    }

    [Property]
    public void No_words_give_an_issue_date_as_the_date_of_the_piece(Piece piece)
    {
        PieceDating dating = Date(piece);
        Assert.DoesNotMatch(MadeInYear(), Phrasing.ListingLine(dating) + " " + Statement.Of(dating) + " " + Phrasing.MuseumDate(dating).Display);
    }

    private static PieceDating Date(Piece piece) => PieceDating.Of(piece, Samples.AsOf, Samples.Reference);

    [GeneratedRegex(@"\{(\w+)(?::[^}]*)?\}")]
    private static partial Regex Parameter();

    [GeneratedRegex(@"\b(?:made|dates from|dated) (?:in |to )?\d{4}")]
    private static partial Regex MadeInYear();
}
