using System.Globalization;
using System.Text;
using static Terminus.Tests.Inventories.InventoryRuns;

namespace Terminus.Tests.Inventories;

/// <summary>Lines that nobody means well with: each is answered, and the piece after it is dated as ever.</summary>
public sealed class HostileInventoryTest
{
    private const string Good = "{\"id\":\"A\",\"features\":[{\"feature\":\"inv.feature_30\"}]}";

    public static TheoryData<string, string> NoPieces => new()
    {
        { "[]", "Found a list where a piece" },
        { "[" + Good + "]", "Found a list where a piece" },
        { "null", "Found null where a piece" },
        { "\"A\"", "Found the string \"A\" where a piece" },
        { "{}", "The member \"id\" is missing" },
        { "{\"id\":1}", "Found the number 1 where an id" },
        { "{\"id\":\"\"}", "1 to 200 characters" },
        { "{\"id\":\"\\ud800\"}", "no Unicode characters" },
        { "{\"id\":\"\\u0000\"}", "U+0000" },
        { Good + Good, "This is not JSON from here on" },
        { Good + " more", "This is not JSON from here on" },
        { Good.Substring(0, 30), "ends before its JSON does" },
        { "{\"id\":\"A\",\"title\":\"B\", // note\n", "Comments are not allowed" },
        { "{\"id\":\"A\",}", "Take out the comma" },
        { "{\"id\":\"A\0\"}", "control character" },
        { new string('[', 100_000), "nest deeper than 64 levels" },
        { "{\"id\":\"A\",\"marks\":" + new string('[', 200) + new string(']', 200) + "}", "nest deeper than 64 levels" },
    };

    [Theory]
    [MemberData(nameof(NoPieces))]
    public async Task WriteAsync_LineThatIsNoPiece_IsRefusedAndTheNextIsDated(string line, string message)
    {
        line = line.Replace("\n", "", StringComparison.Ordinal);

        Assert.Contains(message, Refused(line).Message, StringComparison.Ordinal);
        string[] answers = (await WriteAsync(line + "\n" + Good)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, answers.Length);
        Assert.StartsWith("{\"error\":", answers[0], StringComparison.Ordinal);
        Assert.Equal(OneByOne(Good), answers[1] + "\n");
    }

    [Theory]
    [InlineData("\"stated\":\"Y99999999999\"", "outside the years")]
    [InlineData("\"stated\":\"2026-02-30\"", "no EDTF date")]
    [InlineData("\"title\":\"A\",\"title\":\"B\"", "stands twice")]
    [InlineData("\"titel\":\"A\"", "not known")]
    [InlineData("\"title\":\"\\udc00\"", "no Unicode characters")]
    [InlineData("\"features\":[{\"feature\":\"inv.feature_3O\"}]", "not in the reference file")]
    [InlineData("\"opinions\":[{\"windows\":[{\"notBefore\":\"1960\",\"notAfter\":\"1950\",\"confidence\":0.5}]}]", "starts 1960-01-01, after its end")]
    [InlineData("\"opinions\":[{\"windows\":[{\"notBefore\":\"1950\",\"confidence\":1e400}]}]", "a confidence")]
    public void DateLine_PieceWithAProblem_IsDatedWithItsProblem(string member, string message)
    {
        InventoryResult result = Inventory.DateLine(Encoding.UTF8.GetBytes("{\"id\":\"A\"," + member + "}"), Options)!;

        Assert.Contains(message, Assert.Single(result.Dating!.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void DateLine_BytesThatAreNoUtf8_AreRefusedOrReported()
    {
        Assert.Contains("This is not JSON", Refused([0xFF, 0xFE, (byte)'{']).Message, StringComparison.Ordinal);
        Assert.Contains("no Unicode characters", Refused([.. "{\"id\":\""u8, 0xC3, 0x28, .. "\"}"u8]).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void DateLine_NumberOfAMillionDigits_IsReportedByItsStart()
    {
        string line = "{\"id\":\"A\",\"title\":" + new string('9', 1_000_000) + "}";

        DocumentProblem problem = Assert.Single(Inventory.DateLine(Encoding.UTF8.GetBytes(line), Options)!.Dating!.Problems);

        Assert.StartsWith("Found the number 999", problem.Message, StringComparison.Ordinal);
        Assert.InRange(problem.Message.Length, 1, 200);
    }

    [Fact]
    public async Task WriteAsync_LineBeyondTheLimit_IsRefusedAndTheNextIsDated()
    {
        using var stream = new RepeatedStream((byte)' ', 50L * 1024 * 1024, Encoding.UTF8.GetBytes("\n" + Good));

        string[] answers = (await InventoryRuns.WriteAsync(stream)).Split('\n');

        Assert.Equal("{\"error\":\"The line is longer than 1048576 bytes, which is not read.\",\"path\":\"$\",\"text\":\"\"}", answers[0]);
        Assert.Equal(OneByOne(Good), answers[1] + "\n");
    }

    [Fact]
    public async Task WriteAsync_LineAtTheLimit_IsRead()
    {
        string line = Good + new string(' ', Inventory.LongestLine - Good.Length);

        Assert.Equal(OneByOne(Good), await WriteAsync(line + "\n"));
        Assert.StartsWith("{\"error\":\"The line is longer", await WriteAsync(line + " \n"), StringComparison.Ordinal);
        Assert.Equal("The line is longer than 1048576 bytes, which is not read.", Refused(line + " ").Message);
    }

    [Fact]
    public void DateLine_EvidenceBeyondTheLimit_IsDatedFromTheFirst256Items()
    {
        string records = string.Join(",", Enumerable.Range(0, 300).Select(i => FormattableString.Invariant($"{{\"date\":\"{1700 + i}\",\"what\":\"note {i}\"}}")));

        PieceDating dating = Inventory.DateLine(Encoding.UTF8.GetBytes("{\"id\":\"A\",\"records\":[" + records + "]}"), Options)!.Dating!;

        Assert.Equal(256, dating.Dating.Evidence.Count);
        Assert.Contains(dating.Problems, p => p.Message.Contains("300 items", StringComparison.Ordinal));
    }

    public static TheoryData<string, string> FullLines => new()
    {
        { "records", "{\"date\":\"1{0:000}\",\"what\":\"{0}\"}" },
        { "features", "{\"feature\":\"inv.feature_30\",\"part\":\"{0}\"}" },
        { "marks", "{\"patent\":\"US utility 450046\",\"part\":\"{0}\"}" },
        { "opinions", "{\"windows\":[{\"notBefore\":\"1900\",\"confidence\":0.5}],\"by\":\"{0}\",\"restsOn\":[\"{0}\"]}" },
        { "adverts", "{\"date\":\"1950\",\"model\":\"{0}\"}" },
    };

    [Theory]
    [MemberData(nameof(FullLines))]
    public void DateLine_LineFullOfEntries_AllocatesInItsLength(string member, string entry)
    {
        // A line twice as long may take twice as much, and never the square of it.
        byte[] line = Filled(member, entry, Inventory.LongestLine - 100);
        byte[] half = Filled(member, entry, Inventory.LongestLine / 2);
        Allocated(half);

        Assert.InRange(Allocated(line), 0, (3 * Allocated(half)) + 1_000_000);
        Assert.InRange(Allocated(line), 0, 200L * line.Length);
    }

    [Fact]
    public void DateLine_PartsBeyondTheLimit_AreSaidAndNotDated()
    {
        PieceDating dating = Inventory.DateLine(Filled("features", "{\"feature\":\"inv.feature_30\",\"part\":\"{0}\"}", 20_000), Options)!.Dating!;

        Assert.Equal(256, dating.Parts.Count);
        Assert.Contains(dating.Problems, p => p.Message.EndsWith("parts with evidence; the first 256 were dated.", StringComparison.Ordinal));
    }

    [Fact]
    public void DateLine_ObservationsBeyondTheLimit_AreSaidAndNotLookedAt()
    {
        PieceDating dating = Inventory.DateLine(Filled("records", "{\"date\":\"1900\",\"what\":\"{0}\"}", 100_000), Options)!.Dating!;

        Assert.Equal(256, dating.Dating.Evidence.Count);
        Assert.Contains(dating.Problems, p => p.Message.EndsWith("the first 1024 were looked at.", StringComparison.Ordinal));
    }

    private static byte[] Filled(string member, string entry, int bytes)
    {
        var line = new StringBuilder("{\"id\":\"A\",\"" + member + "\":[");
        for (int i = 0; line.Length + entry.Length + 20 < bytes; i++)
        {
            line.Append(i == 0 ? "" : ",").Append(entry.Replace("{0:000}", (i % 1000).ToString("000", CultureInfo.InvariantCulture), StringComparison.Ordinal)
                .Replace("{0}", i.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal));
        }

        return Encoding.UTF8.GetBytes(line.Append("]}").ToString());
    }

    private static long Allocated(byte[] line)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.NotNull(Inventory.DateLine(line, Options)!.Dating);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("fr-FR")]
    [InlineData("ar-SA")]
    [InlineData("th-TH")]
    [InlineData("fa-IR")]
    public async Task WriteAsync_ForeignCulture_GivesTheSameBytes(string culture)
    {
        string lines = Encoding.UTF8.GetString(InventoryGenerator.Utf8(5, 200));
        string expected = await WriteAsync(lines);
        (CultureInfo before, CultureInfo? usual) = (CultureInfo.CurrentCulture, CultureInfo.DefaultThreadCurrentCulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            CultureInfo.CurrentUICulture = CultureInfo.CurrentCulture;

            Assert.Equal(expected, await WriteAsync(lines));
            Assert.Equal(expected, OneByOne(lines));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.CurrentUICulture = before;
        }
    }

    [Theory]
    [InlineData("Pacific/Kiritimati")]
    [InlineData("Pacific/Pago_Pago")]
    public async Task WriteAsync_ForeignTimeZone_GivesTheSameBytes(string zone)
    {
        string lines = Encoding.UTF8.GetString(InventoryGenerator.Utf8(6, 100));
        string expected = await WriteAsync(lines);
        string? before = Environment.GetEnvironmentVariable("TZ");
        try
        {
            Environment.SetEnvironmentVariable("TZ", zone);
            TimeZoneInfo.ClearCachedData();

            Assert.Equal(expected, await WriteAsync(lines));
        }
        finally
        {
            Environment.SetEnvironmentVariable("TZ", before);
            TimeZoneInfo.ClearCachedData();
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(64)]
    public async Task WriteAsync_AnyNumberOfBatchesAtOnce_GivesTheSameBytes(int atOnce)
    {
        string lines = Encoding.UTF8.GetString(InventoryGenerator.Utf8(7, 3000));

        Assert.Equal(OneByOne(lines), await WriteAsync(lines, Options with { BatchesAtOnce = atOnce }));
    }
}
