using System.Text;
using FsCheck.Xunit;
using static Terminus.Tests.Inventories.InventoryRuns;

namespace Terminus.Tests.Inventories;

public sealed class InventoryTest
{
    private const string Good = "{\"id\":\"A\",\"features\":[{\"feature\":\"inv.feature_30\"}]}";

    [Property(MaxTest = 30)]
    public async Task However_the_stream_is_cut_and_however_many_are_at_work_the_answers_are_those_of_each_line_alone(
        ulong seed, byte longestRead, byte atOnce)
    {
        byte[] lines = InventoryGenerator.Utf8(seed, 40);
        var random = new SplitMix64(seed);
        using var stream = new SlowStream(lines, () => random.NextInt((longestRead * 20) + 1));

        string answers = await WriteAsync(stream, Options with { BatchesAtOnce = 1 + (atOnce % 20) });

        Assert.Equal(OneByOne(Encoding.UTF8.GetString(lines)), answers);
    }

    [Property(MaxTest = 20)]
    public async Task A_collection_split_between_lines_and_joined_again_has_the_answers_of_one_run(ulong seed, byte where)
    {
        string[] lines = Encoding.UTF8.GetString(InventoryGenerator.Utf8(seed, 300)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        lines[where] = "{ no piece";
        string head = string.Join('\n', lines.Take(where)) + "\n";
        string tail = string.Join('\n', lines.Skip(where)) + "\n";

        Assert.Equal(await WriteAsync(head + tail), await WriteAsync(head) + await WriteAsync(tail));
    }

    [Fact]
    public async Task DateAsync_ManyBatches_KeepsTheOrder()
    {
        List<InventoryResult> results = await DateAsync(InventoryGenerator.Utf8(1, 2000));

        Assert.Equal(Enumerable.Range(1, 2000).Select(i => FormattableString.Invariant($"INV-{i:0000000}")), results.Select(r => r.Dating!.Piece.Id));
    }

    [Fact]
    public async Task WriteAsync_BadLineAmongGood_IsAnsweredByItsErrorAndTheRestGoesOn()
    {
        string[] answers = (await WriteAsync(Good + "\nA brooch\n" + Good + "\n")).Split('\n');

        Assert.Equal(4, answers.Length);
        Assert.Equal(answers[0], answers[2]);
        Assert.Equal("{\"error\":\"This is not JSON from here on: found \\\"A\\\".\",\"path\":\"$\",\"text\":\"A brooch\"}", answers[1]);
    }

    [Theory]
    [InlineData(Good, 1)]
    [InlineData("\uFEFF" + Good + "\r\n", 1)]
    [InlineData("\n\r\n  \t\n" + Good + "\n\n", 1)]
    [InlineData("\uFEFF\n", 0)]
    [InlineData("", 0)]
    [InlineData("\n\n\n", 0)]
    public async Task WriteAsync_BlankLinesAndForeignLineEnds_AreNoPieces(string lines, int answered)
        => Assert.Equal(string.Concat(Enumerable.Repeat(OneByOne(Good), answered)), await WriteAsync(lines));

    [Fact]
    public async Task DateAsync_StreamThatWaits_AnswersWhatItHas()
    {
        using var wait = new SemaphoreSlim(0);
        int reads = 0;
        using var stream = new SlowStream(Encoding.UTF8.GetBytes(Good + "\n" + Good + "\n"), () =>
        {
            if (reads++ > 0)
            {
                wait.Wait();
            }

            return Good.Length + 1;
        });
        IAsyncEnumerator<InventoryResult> results = Inventory.DateAsync(stream, Options).GetAsyncEnumerator();

        Assert.True(await results.MoveNextAsync());
        Assert.Equal("A", results.Current.Dating!.Piece.Id);
        wait.Release(2);
        Assert.True(await results.MoveNextAsync());
        Assert.False(await results.MoveNextAsync());
        await results.DisposeAsync();
    }

    [Fact]
    public async Task WriteAsync_Cancelled_EndsAfterWholeLines()
    {
        using var results = new MemoryStream();
        using var cancellation = new CancellationTokenSource();
        var afterFirst = new Told(_ => cancellation.Cancel());

        await Assert.ThrowsAnyAsync<OperationCanceledException>(
            () => Inventory.WriteAsync(new MemoryStream(InventoryGenerator.Utf8(2, 5000)), results, Options, afterFirst, cancellation.Token));

        string written = Encoding.UTF8.GetString(results.ToArray());
        Assert.EndsWith("}\n", written, StringComparison.Ordinal);
        Assert.InRange(written.Count(c => c == '\n'), 1, 4999);
    }

    [Fact]
    public async Task WriteAsync_StreamThatCannotBeWritten_FailsWithItsError()
    {
        using var full = new FailingStream(500_000);

        IOException error = await Assert.ThrowsAsync<IOException>(
            () => Inventory.WriteAsync(new MemoryStream(InventoryGenerator.Utf8(3, 5000)), full, Options));

        Assert.Equal("No space is left.", error.Message);
    }

    [Fact]
    public async Task WriteAsync_Progress_EndsAtTheSummary()
    {
        InventorySummary told = InventorySummary.None;

        InventorySummary summary = await Inventory.WriteAsync(
            new MemoryStream(InventoryGenerator.Utf8(4, 1000)), Stream.Null, Options, new Told(s => told = s));

        Assert.Equal(1000, summary.Lines);
        Assert.Equal(summary, told);
    }

    private sealed class Told(Action<InventorySummary> tell) : IProgress<InventorySummary>
    {
        public void Report(InventorySummary value) => tell(value);
    }

    [Fact]
    public async Task Null_ThrowsWithTheName()
    {
        await Throws("lines", () => Inventory.WriteAsync(null!, Stream.Null, InventoryRuns.Options));
        await Throws("results", () => Inventory.WriteAsync(Stream.Null, null!, InventoryRuns.Options));
        await Throws("options", () => Inventory.WriteAsync(Stream.Null, Stream.Null, null!));
        await Throws("lines", async () => await Inventory.DateAsync(null!, InventoryRuns.Options).GetAsyncEnumerator().MoveNextAsync());
        await Throws("options", async () => await Inventory.DateAsync(Stream.Null, null!).GetAsyncEnumerator().MoveNextAsync());
        Assert.Equal("options", Assert.Throws<ArgumentNullException>(() => Inventory.DateLine("{}"u8, null!)).ParamName);
        Assert.Equal("json", Assert.Throws<ArgumentNullException>(() => Inventory.DateLine("{ \"id\": \"A\" }"u8, InventoryRuns.Options)!.Write(null!)).ParamName);

        static async Task Throws(string name, Func<Task> act) => Assert.Equal(name, (await Assert.ThrowsAsync<ArgumentNullException>(act)).ParamName);
    }

    [Fact]
    public void BatchesAtOnce_FewerThanOne_ThrowsWithTheNumber()
    {
        Assert.Equal(1, (InventoryRuns.Options with { BatchesAtOnce = 1 }).BatchesAtOnce);
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => InventoryRuns.Options with { BatchesAtOnce = 0 });
        Assert.Equal(0, error.ActualValue);
        Assert.StartsWith("At least one batch is in work.", error.Message, StringComparison.Ordinal);
    }

    // Sixty characters are shown, and no character is cut in half.
    [Theory]
    [InlineData(60, "", false)]
    [InlineData(61, "", true)]
    [InlineData(58, "\ud83d\ude00", false)]
    [InlineData(59, "\ud83d\ude00", true)]
    public void Error_ShowsTheFirstSixtyCharacters(int letters, string rest, bool cut)
    {
        string line = new string('x', letters) + rest;
        string shown = Inventory.DateLine(System.Text.Encoding.UTF8.GetBytes("  " + line + "  "), InventoryRuns.Options)!.Error!.Text;
        Assert.Equal(cut ? new string('x', Math.Min(letters, 60)) + "…" : line, shown);
    }
}
