using System.Runtime.CompilerServices;

namespace Terminus;

/// <summary>Does the same work on each item of a source on the thread pool, some at once, and gives the answers in the order of the source.</summary>
/// <remarks>
/// An answer is given as soon as it is there, also while the source keeps the next item waiting. Nothing is read ahead of the items in
/// work but one, so what is held does not grow with the source.
/// </remarks>
internal static class OrderedWork
{
    internal static async IAsyncEnumerable<TAnswer> RunAsync<TItem, TAnswer>(
        Func<CancellationToken, Task<TItem?>> read, Func<TItem, TAnswer> work, int atOnce, [EnumeratorCancellation] CancellationToken cancellation)
        where TItem : class
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var stopped = new TaskCompletionSource<bool>(TaskCreationOptions.RunContinuationsAsynchronously);
        using CancellationTokenRegistration registration = stop.Token.Register(() => stopped.TrySetResult(true));
        var inWork = new Queue<Task<TAnswer>>();

        // On the pool, as there are streams that make their caller wait.
        Task<TItem?> ReadNext() => Task.Run(() => read(stop.Token), stop.Token);
        try
        {
            Task<TItem?>? next = ReadNext();
            while (next is not null || inWork.Count > 0)
            {
                cancellation.ThrowIfCancellationRequested();
                if (next is { IsCompleted: true } && inWork.Count < atOnce)
                {
                    TItem? item = await next.ConfigureAwait(false);
                    next = item is null ? null : ReadNext();
                    if (item is not null)
                    {
                        inWork.Enqueue(Task.Run(() => work(item), stop.Token));
                    }
                }
                else if (inWork.Count > 0 && inWork.Peek().IsCompleted)
                {
                    yield return await inWork.Dequeue().ConfigureAwait(false);
                }
                else
                {
                    await Task.WhenAny(Waiting(next, inWork, atOnce, stopped.Task)).ConfigureAwait(false);
                }
            }
        }
        finally
        {
            // No work goes on after the last answer was asked for. A stream that is waiting to be read may never come back, so it is left.
            stop.Cancel();
            await Task.WhenAny(Task.WhenAll(inWork)).ConfigureAwait(false);
        }
    }

    private static List<Task> Waiting<TItem, TAnswer>(Task<TItem?>? next, Queue<Task<TAnswer>> inWork, int atOnce, Task stopped)
    {
        var waiting = new List<Task> { stopped };
        if (next is not null && inWork.Count < atOnce)
        {
            waiting.Add(next);
        }

        if (inWork.Count > 0)
        {
            waiting.Add(inWork.Peek());
        }

        return waiting;
    }
}
