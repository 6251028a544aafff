using System.Collections;

namespace Terminus;

/// <summary>
/// An immutable list that equals another one when their elements are equal in order: what makes a record with a list
/// equal by content. Public members show it as <see cref="IReadOnlyList{T}"/>.
/// </summary>
internal sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    internal static readonly ValueList<T> Empty = new([]);

    private readonly T[] items;

    private ValueList(T[] items) => this.items = items;

    public int Count => items.Length;

    public T this[int index] => items[index];

    internal ReadOnlySpan<T> Span => items;

    internal static ValueList<T> Of(IEnumerable<T>? source)
    {
        if (source is ValueList<T> already)
        {
            return already;
        }

        T[] copy = source is null ? [] : [.. source];
        return copy.Length == 0 ? Empty : new ValueList<T>(copy);
    }

    /// <summary>A list of an array that nobody else holds, without a copy.</summary>
    internal static ValueList<T> Owning(T[] items) => items.Length == 0 ? Empty : new ValueList<T>(items);

    public bool Equals(ValueList<T>? other)
    {
        if (ReferenceEquals(this, other))
        {
            return true;
        }

        if (other is null || other.items.Length != items.Length)
        {
            return false;
        }

        for (int i = 0; i < items.Length; i++)
        {
            if (!EqualityComparer<T>.Default.Equals(items[i], other.items[i]))
            {
                return false;
            }
        }

        return true;
    }

    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    public override int GetHashCode()
    {
        int hash = 17;
        foreach (T item in items)
        {
            hash = unchecked((hash * 31) + (item?.GetHashCode() ?? 0));
        }

        return hash;
    }

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();

    public override string ToString() => "[" + string.Join(", ", items) + "]";
}

/// <summary>Makes <see cref="ValueList{T}"/> without naming its type argument.</summary>
internal static class ValueList
{
    internal static ValueList<T> Of<T>(IEnumerable<T>? source) => ValueList<T>.Of(source);
}
