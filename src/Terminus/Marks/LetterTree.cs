namespace Terminus;

/// <summary>All forms of all words as a tree of letters, so that a word is looked up in one walk over its characters.</summary>
internal sealed class LetterTree
{
    private readonly Node root = new();

    internal void Add(string form, Lexeme lexeme)
    {
        Node node = root;
        foreach (char letter in form)
        {
            node = node.Child(letter, add: true)!;
        }

        if (Array.IndexOf(node.Lexemes, lexeme) < 0)
        {
            node.Lexemes = [.. node.Lexemes, lexeme];
        }
    }

    /// <summary>The meanings of a whole word; empty where it is not known.</summary>
    internal Lexeme[] Find(ReadOnlySpan<char> word, ref int visits)
        => LongestStart(word, false, out Lexeme[] lexemes, out _, ref visits) == word.Length ? lexemes : [];

    /// <summary>The length of the longest known word that the text starts with, or 0.</summary>
    /// <param name="text">Folded letters and digits.</param>
    /// <param name="repair">Whether a digit may stand for the letter it looks like.</param>
    /// <param name="lexemes">The meanings of that word; empty where there is none.</param>
    /// <param name="repaired">Whether a digit was taken for a letter.</param>
    /// <param name="visits">Counts the characters looked at.</param>
    internal int LongestStart(ReadOnlySpan<char> text, bool repair, out Lexeme[] lexemes, out bool repaired, ref int visits)
    {
        Node? node = root;
        int longest = 0;
        bool changed = false;
        lexemes = [];
        repaired = false;
        for (int i = 0; i < text.Length; i++)
        {
            visits++;
            Node? next = node.Child(text[i]);
            if (next is null && repair)
            {
                next = node.Child(Fold.AsLetter(text[i]));
                changed = true;
            }

            if (next is null)
            {
                break;
            }

            node = next;
            if (node.Lexemes.Length > 0)
            {
                longest = i + 1;
                lexemes = node.Lexemes;
                repaired = changed;
            }
        }

        return longest;
    }

    /// <summary>
    /// The meanings of a word with lost letters: <c>?</c> is any one letter, <c>*</c> any number of them. All ways are followed at
    /// once, so that each character is visited once.
    /// </summary>
    internal Lexeme[] Match(ReadOnlySpan<char> pattern, ref int visits)
    {
        var nodes = new List<Node> { root };
        foreach (char letter in pattern)
        {
            visits++;
            var next = new List<Node>();
            foreach (Node node in nodes)
            {
                if (letter == '*')
                {
                    node.AddSelfAndBelow(next);
                }
                else if (letter == '?')
                {
                    next.AddRange(node.Children);
                }
                else if (node.Child(letter) is { } child)
                {
                    next.Add(child);
                }
            }

            nodes = letter == '*' ? [.. next.Distinct()] : next;
        }

        return [.. nodes.SelectMany(n => n.Lexemes).Distinct()];
    }

    private sealed class Node
    {
        private readonly SortedList<char, Node> children = [];

        internal Lexeme[] Lexemes { get; set; } = [];

        internal IEnumerable<Node> Children => children.Values;

        internal Node? Child(char letter, bool add = false)
        {
            if (!children.TryGetValue(letter, out Node? child) && add)
            {
                child = new Node();
                children.Add(letter, child);
            }

            return child;
        }

        internal void AddSelfAndBelow(List<Node> to)
        {
            to.Add(this);
            foreach (Node child in children.Values)
            {
                child.AddSelfAndBelow(to);
            }
        }
    }
}
