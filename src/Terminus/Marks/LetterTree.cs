namespace Terminus;

/// <summary>
/// All forms of all words as a tree of letters, so that a word is looked up in one walk over its characters. The tree lies in one array: a node
/// knows its first child and its next sibling, and the first letters of words have a table of their own.
/// </summary>
internal sealed class LetterTree
{
    private const int TableSize = 128;

    private readonly int[] starts = new int[TableSize];
    private readonly Dictionary<Lexeme, List<string>> forms = [];
    private Node[] nodes = new Node[4096];
    private int count = 1;
    private Meaning? all;
    private int longest;

    internal void Add(string form, Lexeme lexeme)
    {
        int at = 0;
        foreach (char letter in form)
        {
            int child = Child(at, letter);
            at = child != 0 ? child : AddChild(at, letter);
        }

        Meaning meaning = nodes[at].Meaning ?? Meaning.None;
        if (Array.IndexOf(meaning.Lexemes, lexeme) < 0)
        {
            nodes[at].Meaning = new Meaning([.. meaning.Lexemes, lexeme]);
            if (!forms.TryGetValue(lexeme, out List<string>? known))
            {
                forms.Add(lexeme, known = []);
            }

            known.Add(form);
            longest = Math.Max(longest, form.Length);
            all = null;
        }
    }

    /// <summary>The meaning of a whole word; none where it is not known.</summary>
    internal Meaning Find(ReadOnlySpan<char> word, ref int visits)
        => LongestStart(word, false, out Meaning meaning, out _, ref visits) == word.Length ? meaning : Meaning.None;

    /// <summary>The length of the longest known word that the text starts with, or 0.</summary>
    /// <param name="text">Folded letters and digits.</param>
    /// <param name="repair">Whether a digit may stand for the letter it looks like.</param>
    /// <param name="meaning">The meaning of that word; none where there is no such word.</param>
    /// <param name="repaired">Whether a digit was taken for a letter.</param>
    /// <param name="visits">Counts the characters looked at.</param>
    internal int LongestStart(ReadOnlySpan<char> text, bool repair, out Meaning meaning, out bool repaired, ref int visits)
    {
        int node = 0;
        int longestKnown = 0;
        bool changed = false;
        meaning = Meaning.None;
        repaired = false;
        for (int i = 0; i < text.Length; i++)
        {
            visits++;
            int next = Child(node, text[i]);
            if (next == 0 && repair)
            {
                next = Child(node, Fold.AsLetter(text[i]));
                changed = true;
            }

            if (next == 0)
            {
                break;
            }

            node = next;
            if (nodes[node].Meaning is { } known)
            {
                longestKnown = i + 1;
                meaning = known;
                repaired = changed;
            }
        }

        return longestKnown;
    }

    /// <summary>
    /// The meanings of a word with lost letters: <c>?</c> is any one letter, <c>*</c> any number of them. The few hundred forms are held against the
    /// pattern one by one, so that a pattern that fits much costs no more than one that fits little, and nothing but its answer.
    /// </summary>
    internal Lexeme[] Match(ReadOnlySpan<char> pattern, ref int visits) => Matching(pattern, ref visits).Lexemes;

    /// <summary>The meaning of a word with lost letters, as <see cref="Match"/> finds it.</summary>
    internal Meaning Matching(ReadOnlySpan<char> pattern, ref int visits)
    {
        visits += pattern.Length;
        Span<char> wanted = stackalloc char[(2 * longest) + 1];
        int length = 0;
        foreach (char letter in pattern)
        {
            bool repeats = letter == '*' && length > 0 && wanted[length - 1] == '*';
            if (!repeats && length == wanted.Length)
            {
                return Meaning.None;
            }

            length += repeats ? 0 : 1;
            wanted[length - 1] = letter;
        }

        wanted = wanted.Slice(0, length);
        if (length == 1 && wanted[0] == '*')
        {
            return all ??= new Meaning([.. forms.Keys]);
        }

        List<Lexeme>? found = null;
        foreach (KeyValuePair<Lexeme, List<string>> known in forms)
        {
            foreach (string form in known.Value)
            {
                if (Fits(form, wanted))
                {
                    (found ??= []).Add(known.Key);
                    break;
                }
            }
        }

        return found is null ? Meaning.None : new Meaning([.. found]);
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

    /// <summary>The node behind a letter, or 0.</summary>
    private int Child(int parent, char letter)
    {
        if (parent == 0 && letter < TableSize)
        {
            return starts[letter];
        }

        int child = nodes[parent].FirstChild;
        while (child != 0 && nodes[child].Letter != letter)
        {
            child = nodes[child].NextSibling;
        }

        return child;
    }

    private int AddChild(int parent, char letter)
    {
        if (count == nodes.Length)
        {
            Array.Resize(ref nodes, 2 * count);
        }

        int child = count++;
        nodes[child].Letter = letter;
        if (parent == 0 && letter < TableSize)
        {
            starts[letter] = child;
            return child;
        }

        // Behind its siblings, so that the common words, which stand first in the table of words, are found first.
        int last = nodes[parent].FirstChild;
        if (last == 0)
        {
            nodes[parent].FirstChild = child;
            return child;
        }

        while (nodes[last].NextSibling != 0)
        {
            last = nodes[last].NextSibling;
        }

        nodes[last].NextSibling = child;
        return child;
    }

    private struct Node
    {
        internal Meaning? Meaning;
        internal int FirstChild;
        internal int NextSibling;
        internal char Letter;
    }
}
