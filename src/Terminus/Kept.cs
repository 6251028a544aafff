using System.Collections.Concurrent;

namespace Terminus;

/// <summary>
/// Answers that were worked out before, by what they answer: at most a given number, the ones asked for lately. Safe on any thread; what is
/// asked for is the same whether it was kept or not.
/// </summary>
/// <remarks>
/// There are two halves. New answers go into the young one; when it is full it becomes the old one, and what was the old one is dropped. An answer
/// found in the old half goes into the young one again, so what is asked for again and again stays.
/// </remarks>
internal sealed class Kept<TKey, TValue>
    where TKey : struct, IEquatable<TKey>
    where TValue : class
{
    private readonly int half;
    private ConcurrentDictionary<TKey, TValue> young = new();
    private ConcurrentDictionary<TKey, TValue> old = new();
    private int inYoung;

    /// <param name="most">The most answers that are kept, give or take one a thread.</param>
    internal Kept(int most) => half = most / 2;

    /// <summary>How many answers are kept.</summary>
    internal int Count => young.Count + old.Count;

    /// <summary>The answer as it was kept, or worked out now and kept.</summary>
    internal TValue Get<TState>(TKey key, TState state, Func<TKey, TState, TValue> make)
    {
        ConcurrentDictionary<TKey, TValue> current = Volatile.Read(ref young);
        if (current.TryGetValue(key, out TValue? known))
        {
            return known;
        }

        TValue answer = Volatile.Read(ref old).TryGetValue(key, out known) ? known : make(key, state);
        if (current.TryAdd(key, answer) && Interlocked.Increment(ref inYoung) == half)
        {
            Volatile.Write(ref old, current);
            Volatile.Write(ref young, new ConcurrentDictionary<TKey, TValue>());
            Interlocked.Exchange(ref inYoung, 0);
        }

        return answer;
    }
}
