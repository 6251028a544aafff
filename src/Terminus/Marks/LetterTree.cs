namespace Terminus;

/// <summary>All forms of all words as a tree of letters, so that a word is looked up in one walk over its characters.</summary>
internal sealed class LetterTree
{
    private readonly Node root = new();
    private readonly Dictionary<Lexeme, List<string>> forms = [];
    private Lexeme[]? all;
    private int longest;

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
            if (!forms.TryGetValue(lexeme, out List<string>? known))
            {
                forms.Add(lexeme, known = []);
            }

            known.Add(form);
            longest = Math.Max(longest, form.Length);
            all = null;
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
    /// The meanings of a word with lost letters: <c>?</c> is any one letter, <c>*</c> any number of them. The few hundred forms are held against the
    /// pattern one by one, so that a pattern that fits much costs no more than one that fits little, and nothing but its answer.
    /// </summary>
    internal Lexeme[] Match(ReadOnlySpan<char> pattern, ref int visits)
    {
        visits += pattern.Length;
        Span<char> wanted = stackalloc char[(2 * longest) + 1];
        int length = 0;
        foreach (char letter in pattern)
        {
            bool repeats = letter == '*' && length > 0 && wanted[length - 1] == '*';
            if (!repeats && length == wanted.Length)
            {
                return [];
            }

            length += repeats ? 0 : 1;
            wanted[length - 1] = letter;
        }

        wanted = wanted.Slice(0, length);
        if (length == 1 && wanted[0] == '*')
        {
            return all ??= [.. forms.Keys];
        }

        var found = new List<Lexeme>();
        foreach (KeyValuePair<Lexeme, List<string>> known in forms)
        {
            foreach (string form in known.Value)
            {
                if (Fits(form, wanted))
                {
                    found.Add(known.Key);
                    break;
                }
            }
        }

        return [.. found];
    }

    // A star takes as little as it can; where that fails, the last star takes one letter more.
    private static bool Fits(string form, ReadOnlySpan<char> wanted)
    {
        (int letter, int at, int star, int behindStar) = (0, 0, -1, 0);
        while (letter < form.Length)
        {
            if (at < wanted.Length && wanted[at] == '*')
            {
                (star, behindStar) = (at++, letter);
            }
            else if (at < wanted.Length && (wanted[at] == '?' || wanted[at] == form[letter]))
            {
                letter++;
                at++;
            }
            else if (star >= 0)
            {
                (at, letter) = (star + 1, ++behindStar);
            }
            else
            {
                return false;
            }
        }

        return at == wanted.Length || (at == wanted.Length - 1 && wanted[at] == '*');
    }

    private sealed class Node
    {
        private readonly SortedList<char, Node> children = [];

        internal Lexeme[] Lexemes { get; set; } = [];

        internal Node? Child(char letter, bool add = false)
        {
            if (!children.TryGetValue(letter, out Node? child) && add)
            {
                child = new Node();
                children.Add(letter, child);
            }

            return child;
        }
    }
}
