namespace Terminus.Tests.Documents;

public class DocumentWritingTest
{
    [Fact]
    public void ToText_LettersAndMarks_StandAsTheyAre()
        => Assert.Equal("{\"a\":\"déposé – \\\"½\\\" <&>\"}", Compact(json => json.WriteString("a", "déposé – \"½\" <&>")));

    [Fact]
    public void WriteRounded_SumOfTenths_HasNoNoise()
        => Assert.Equal("{\"a\":0.3,\"b\":0}", Compact(json =>
        {
            json.WriteRounded("a"u8, 0.1 + 0.2);
            json.WriteRounded("b"u8, -1e-15);
        }));

    // Expected by the platform's own shortest digits of the rounded number.
    [Theory]
    [InlineData(0.9)]
    [InlineData(0.93 * 0.98)]
    [InlineData(1 - 0.66)]
    [InlineData(0.000123456)]
    [InlineData(0.0000123456)]
    [InlineData(0.123456789012345)]
    [InlineData(1)]
    [InlineData(12.5)]
    public void WriteRounded_AnyNumber_IsWrittenAsThePlatformWritesItRounded(double value)
        => Assert.Equal("{\"a\":" + System.Text.Json.JsonSerializer.Serialize(Math.Round(value, 12)) + "}", Compact(json => json.WriteRounded("a"u8, value)));

    [Fact]
    public void WriteWindow_OpenEnd_IsNull()
        => Assert.Equal(
            "{\"notBefore\":\"1961-07-11\",\"notAfter\":null}",
            Compact(json => json.WriteWindow(DateWindow.From(new NodaTime.LocalDate(1961, 7, 11)))));

    [Fact]
    public void WriteOptional_NothingToSay_IsLeftOut()
        => Assert.Equal("{\"c\":null,\"d\":true,\"f\":[\"x\"]}", Compact(json =>
        {
            json.WriteOptional("a"u8, null);
            json.WriteNullable("c"u8, (string?)null);
            json.WriteFlag("d"u8, true);
            json.WriteFlag("e"u8, false);
            json.WriteNames("f"u8, ["x"]);
            json.WriteNames("g"u8, []);
        }));

    [Fact]
    public void Indented_BreaksLinesTheSameWayEverywhere()
        => Assert.Equal("{\n  \"a\": 1\n}", DocumentWriting.ToText(DocumentWriting.Indented, json =>
        {
            json.WriteStartObject();
            json.WriteNumber("a", 1);
            json.WriteEndObject();
        }));

    private static string Compact(Action<System.Text.Json.Utf8JsonWriter> members) => DocumentWriting.ToText(DocumentWriting.Compact, json =>
    {
        json.WriteStartObject();
        members(json);
        json.WriteEndObject();
    });
}
