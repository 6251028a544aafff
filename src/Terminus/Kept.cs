using System.Collections.Concurrent;

namespace Terminus;

/// <summary>
/// Answers that were worked out before, by what they answer: at most a given number, the ones asked for lately, from the second time on. Safe on any
/// thread; what is asked for is the same whether it was kept or not.
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
    private readonly CameBefore asked;
    private Half young = new();
    private Half old = new();

    /// <param name="most">The most answers that are kept, give or take one a thread; a power of two.</param>
    internal Kept(int most) => (half, asked) = (most / 2, new CameBefore(most));

    /// <summary>How many answers are kept.</summary>
    internal int Count => young.Answers.Count + old.Answers.Count;

    /// <summary>The answer as it was kept, or worked out now and, where it was asked for before, kept.</summary>
    internal TValue Get<TState>(TKey key, TState state, Func<TKey, TState, TValue> make)
    {
        Half current = Volatile.Read(ref young);
        if (current.Answers.TryGetValue(key, out TValue? known))
        {
            return known;
        }

        bool isOld = Volatile.Read(ref old).Answers.TryGetValue(key, out known);
        TValue answer = isOld ? known! : make(key, state);
        if (!isOld && !asked.Note(key.GetHashCode()))
        {
            return answer;
        }

        // A full half takes no more, and whoever filled it makes room; so it stays bounded however long that thread is kept waiting.
        if (Volatile.Read(ref current.Taken) < half && current.Answers.TryAdd(key, answer) && Interlocked.Increment(ref current.Taken) == half)
        {
            Volatile.Write(ref old, current);
            Volatile.Write(ref young, new Half());
        }

        return answer;
    }

    private sealed class Half
    {
        // How many answers were added; counted apart, since the dictionary would lock to count them.
        internal int Taken;

        internal ConcurrentDictionary<TKey, TValue> Answers { get; } = new();
    }
}
