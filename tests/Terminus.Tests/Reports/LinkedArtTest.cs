using System.Text.Json;
using NodaTime;

namespace Terminus.Tests.Reports;

/// <summary>Against the rows of TestData/reports, each with its source.</summary>
public class LinkedArtTest
{
    private static readonly JsonElement Rows = JsonDocument
        .Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "TestData", "reports", "worked-examples.json"))).RootElement;

    [Fact]
    public void WriteBounds_AYear_IsThePublishedTimeSpan()
    {
        JsonElement row = Row("LA-nightwatch");
        JsonElement bounds = Bounds(DateWindow.InYear(row.GetProperty("inputs").GetProperty("year").GetInt32()));
        AssertMember("begin_of_the_begin", row, bounds);
        AssertMember("end_of_the_end", row, bounds);
    }

    [Fact]
    public void WriteBounds_AWindow_HasNoInnerBounds()
    {
        // The published example has an inner span that ends before it starts; the outer bounds are the same.
        JsonElement row = Row("LA-circa1750");
        JsonElement bounds = Bounds(DateWindow.Between(new LocalDate(1720, 1, 1), new LocalDate(1780, 1, 1)));
        AssertMember("begin_of_the_begin", row, bounds);
        Assert.StartsWith(row.GetProperty("expected").GetProperty("end_of_the_end").GetString()![..10], bounds.GetProperty("end_of_the_end").GetString(), StringComparison.Ordinal);
        Assert.False(bounds.TryGetProperty("end_of_the_begin", out _));
        Assert.False(bounds.TryGetProperty("begin_of_the_end", out _));
    }

    [Fact]
    public void WriteBounds_YearsBeforeOne_AreThoseOfAstronomers()
    {
        // 2475 BC is -2474; the row prints signed BC years without a year zero.
        int[] outer = [.. Row("CRM-first-intermediate").GetProperty("expected").GetProperty("P82_at_some_time_within").EnumerateArray().Select(y => y.GetInt32() + 1)];
        JsonElement bounds = Bounds(DateWindow.BetweenYears(outer[0], outer[1]));
        Assert.Equal("-2474-01-01T00:00:00Z", bounds.GetProperty("begin_of_the_begin").GetString());
        Assert.Equal("-2124-12-31T23:59:59Z", bounds.GetProperty("end_of_the_end").GetString());
    }

    [Fact]
    public void ToJson_APiece_HasTheFirmWindowAsBoundsAndTheIntervalInTheName()
    {
        JsonElement record = Read(Samples.Pending, "https://example.org/object/14");
        Assert.Equal("https://linked.art/ns/v1/linked-art.json", record.GetProperty("@context").GetString());
        Assert.Equal("https://example.org/object/14", record.GetProperty("id").GetString());
        Assert.Equal("HumanMadeObject", record.GetProperty("type").GetString());
        JsonElement production = record.GetProperty("produced_by");
        Assert.Equal("Production", production.GetProperty("type").GetString());
        JsonElement span = production.GetProperty("timespan");
        Assert.Equal(["type", "identified_by", "begin_of_the_begin", "end_of_the_end"], span.EnumerateObject().Select(m => m.Name));
        Assert.Equal("1956-03-06T00:00:00Z", span.GetProperty("begin_of_the_begin").GetString());
        Assert.Equal("2026-11-25T23:59:59Z", span.GetProperty("end_of_the_end").GetString());
        Assert.Equal(
            "1956–1961 (6 March 1956 to 11 July 1961 at confidence 0.9: belief 0.93, plausibility 1, conflict 0)",
            span.GetProperty("identified_by")[0].GetProperty("content").GetString());
    }

    [Fact]
    public void ToJson_AContradiction_HasANameAndNoBounds()
        => Assert.Equal(["type", "identified_by"], Read(Samples.Contradicted).GetProperty("produced_by").GetProperty("timespan").EnumerateObject().Select(m => m.Name));

    [Fact]
    public void ToJson_NoUri_HasNoId() => Assert.False(Read(Samples.Undated).TryGetProperty("id", out _));

    [Theory]
    [InlineData("a \"quoted\" <b> & 'c' \u0001 \u2028")]
    [InlineData("lone {lone} surrogate")]
    public void ToJson_AnyTitle_IsStillJson(string written)
    {
        string title = written.Replace("{lone}", "\ud800", StringComparison.Ordinal);
        JsonElement record = JsonDocument.Parse(LinkedArt.ToJson(PieceDating.Of(new Piece("A", title), Samples.AsOf, Samples.Reference))).RootElement;
        Assert.Equal(title.Replace('\ud800', '\ufffd'), record.GetProperty("_label").GetString());
    }

    private static JsonElement Row(string id) => Rows.EnumerateArray().Single(r => r.GetProperty("id").GetString() == id);

    private static void AssertMember(string name, JsonElement row, JsonElement bounds)
        => Assert.Equal(row.GetProperty("expected").GetProperty(name).GetString(), bounds.GetProperty(name).GetString());

    private static JsonElement Read(PieceDating dating, string? uri = null) => JsonDocument.Parse(LinkedArt.ToJson(dating, uri)).RootElement;

    private static JsonElement Bounds(DateWindow window)
        => JsonDocument.Parse(DocumentWriting.ToText(DocumentWriting.Compact, json =>
        {
            json.WriteStartObject();
            LinkedArt.WriteBounds(json, window);
            json.WriteEndObject();
        })).RootElement;
}
