namespace Terminus.Benchmarks.Marks;

/// <summary>
/// Forms of words as a tree of letters, written as an expression in which what begins alike stands once: at each letter the compiled code then
/// has one branch to take, where a list of words would be tried word by word.
/// </summary>
internal sealed class FormTree
{
    private readonly SortedDictionary<string, FormTree> next = new(StringComparer.Ordinal);
    private readonly List<string> behind = [];

    /// <summary>Whether nothing was added.</summary>
    internal bool IsEmpty => next.Count == 0;

    /// <summary>Adds a form, letter by letter, and what must stand behind it.</summary>
    internal void Add(ReadOnlySpan<string> letters, string rest)
    {
        if (letters.Length == 0)
        {
            if (!behind.Contains(rest))
            {
                // What goes on longest is tried first.
                behind.Insert(behind.FindIndex(b => b.Length < rest.Length) is var at && at < 0 ? behind.Count : at, rest);
            }

            return;
        }

        if (!next.TryGetValue(letters[0], out FormTree? tree))
        {
            next.Add(letters[0], tree = new FormTree());
        }

        tree.Add(letters[1..], rest);
    }

    /// <summary>The tree as an expression; longer forms before those that they begin with.</summary>
    public override string ToString()
    {
        string[] branches = [.. next.Select(n => n.Key + n.Value), .. behind];
        return branches.Length == 1 ? branches[0] : "(?:" + string.Join('|', branches) + ")";
    }
}
