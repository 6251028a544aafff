namespace Terminus.Tests.Inventories;

public sealed class OrderedWorkTest
{
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(100)]
    public async Task RunAsync_WorkThatEndsInAnyOrder_AnswersInTheOrderOfTheSource(int atOnce)
    {
        var answers = new List<int>();
        await foreach (int answer in OrderedWork.RunAsync(Source(50), Wait, atOnce, default))
        {
            answers.Add(answer);
        }

        Assert.Equal(Enumerable.Range(0, 50), answers);
    }

    [Fact]
    public async Task RunAsync_Anything_HasNoMoreAtWorkThanAllowed()
    {
        int now = 0;
        int most = 0;
        string Work(string item)
        {
            int working = Interlocked.Increment(ref now);
            InterlockedMax(ref most, working);
            Thread.Sleep(1);
            Interlocked.Decrement(ref now);
            return item;
        }

        await foreach (string _ in OrderedWork.RunAsync(Source(60), Work, 3, default))
        {
        }

        Assert.InRange(most, 1, 3);
    }

    [Fact]
    public async Task RunAsync_WorkThatFails_FailsInItsTurn()
    {
        var answers = new List<string>();
        InvalidOperationException error = await Assert.ThrowsAsync<InvalidOperationException>(async () =>
        {
            await foreach (string answer in OrderedWork.RunAsync(Source(20), i => i == "7" ? throw new InvalidOperationException(i) : i, 4, default))
            {
                answers.Add(answer);
            }
        });

        Assert.Equal("7", error.Message);
        Assert.Equal(7, answers.Count);
    }

    [Fact]
    public async Task RunAsync_CancelledWhileTheSourceWaits_Ends()
    {
        using var cancellation = new CancellationTokenSource();
        var never = new TaskCompletionSource<string?>();
        ValueTask<bool> next = OrderedWork.RunAsync(_ => never.Task, i => i, 2, cancellation.Token).GetAsyncEnumerator(default).MoveNextAsync();

        await cancellation.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(next.AsTask);
    }

    private static Func<CancellationToken, Task<string?>> Source(int count)
    {
        int next = 0;
        return _ => Task.FromResult(next < count ? next++.ToString(System.Globalization.CultureInfo.InvariantCulture) : null);
    }

    private static int Wait(string item)
    {
        int number = int.Parse(item, System.Globalization.CultureInfo.InvariantCulture);
        Thread.Sleep(number % 3);
        return number;
    }

    private static void InterlockedMax(ref int most, int value)
    {
        int seen = most;
        while (value > seen)
        {
            seen = Interlocked.CompareExchange(ref most, value, seen);
        }
    }
}
