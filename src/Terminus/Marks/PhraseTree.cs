namespace Terminus;

/// <summary>All fixed wordings as a tree of words; the longest one that stands in the text wins.</summary>
internal sealed class PhraseTree
{
    /// <summary>Stands in a phrase for any digits.</summary>
    internal const string AnyDigits = "#";

    /// <summary>The first key of a lexeme; digits have negative keys.</summary>
    internal const int FirstLexeme = 4;

    private const int Digits = 1;
    private const int Country = 2;
    private const int Demonym = 3;

    // The words "925" and "1000" of wordings are the longest digits.
    private const int LongestDigits = 4;

    private readonly Node root = new();
    private Node?[] starts = [];

    /// <summary>The key of a word of a phrase that is no lexeme: a class of words or digits; 0 where no token can be it.</summary>
    internal static int KeyOf(string word) => word switch
    {
        "{country}" => Country,
        "{demonym}" => Demonym,
        AnyDigits => Digits,
        _ => KeyOf(word.AsSpan()),
    };

    internal void Add(IEnumerable<int> keys, Wording wording)
    {
        Node? node = null;
        foreach (int key in keys)
        {
            node = node is null ? StartOrNew(key) : node.ChildOrNew(key);
        }

        node!.Wording ??= wording;
    }

    /// <summary>The longest wording that starts at a token, and the token behind it; a word of its own beats a class of words.</summary>
    internal bool TryLongest(TokenList tokens, int start, out PhraseMatch match)
    {
        match = default;
        TryLongest(root, tokens, start, start, null, ref match);
        return match.End > start;
    }

    // Most tokens start no wording, so the first words have a table.
    private Node? Start(int key) => key < 0 ? root.Child(key) : key < starts.Length ? starts[key] : null;

    private Node StartOrNew(int key)
    {
        Node start = root.ChildOrNew(key);
        if (key >= 0)
        {
            Array.Resize(ref starts, Math.Max(starts.Length, key + 1));
            starts[key] = start;
        }

        return start;
    }

    private void TryLongest(Node node, TokenList tokens, int start, int at, string? office, ref PhraseMatch best)
    {
        if (node.Wording is { } wording && at > start && at > best.End)
        {
            best = new PhraseMatch(wording, at, office);
        }

        if (node.IsLeaf)
        {
            return;
        }

        int next = at == start ? at : SkipSoft(tokens, at);
        ref readonly Token token = ref tokens[next];
        if (token.Kind == TokenKind.Digits)
        {
            Try(node, KeyOf(tokens.Text(next)), tokens, start, next, office, ref best);
            if (token.Length <= 2)
            {
                Try(node, Digits, tokens, start, next, office, ref best);
            }
        }
        else if (token.Kind == TokenKind.Word && token.Meaning.IsClear)
        {
            foreach (Lexeme lexeme in token.Meaning.Lexemes)
            {
                Try(node, lexeme.Key, tokens, start, next, lexeme.Office ?? office, ref best);
                if (lexeme.Class is WordClass.Country or WordClass.Demonym)
                {
                    Try(node, lexeme.Class == WordClass.Country ? Country : Demonym, tokens, start, next, lexeme.Office ?? office, ref best);
                }
            }
        }
    }

    private void Try(Node node, int key, TokenList tokens, int start, int next, string? office, ref PhraseMatch best)
    {
        Node? child = ReferenceEquals(node, root) ? Start(key) : node.Child(key);
        if (child is not null)
        {
            TryLongest(child, tokens, start, next + 1, office, ref best);
        }
    }

    // The key of digits as they stand; a number that no wording has, such as one with a lost digit, has the key 0.
    private static int KeyOf(ReadOnlySpan<char> digits)
    {
        int value = 0;
        foreach (char digit in digits.Length <= LongestDigits && digits[0] != '0' ? digits : [])
        {
            if (digit is < '0' or > '9')
            {
                return 0;
            }

            value = (10 * value) + (digit - '0');
        }

        return -value;
    }

    private static int SkipSoft(TokenList tokens, int at)
    {
        int next = at;
        while (next < at + 3 && (tokens[next].IsSoft || tokens[next].IsSign('/') || tokens.Text(next) is "THE"))
        {
            next++;
        }

        return next;
    }

    private sealed class Node
    {
        private int[] keys = [];
        private Node[] children = [];

        internal Wording? Wording { get; set; }

        internal bool IsLeaf => keys.Length == 0;

        internal Node? Child(int key)
        {
            int at = keys.AsSpan().IndexOf(key);
            return at < 0 ? null : children[at];
        }

        internal Node ChildOrNew(int key)
        {
            if (Child(key) is { } known)
            {
                return known;
            }

            keys = [.. keys, key];
            children = [.. children, new Node()];
            return children[children.Length - 1];
        }
    }
}

/// <summary>A wording found in the text.</summary>
/// <param name="Wording">The wording.</param>
/// <param name="End">The token behind it.</param>
/// <param name="Country">The office of the country that the text names in it, or null.</param>
internal readonly record struct PhraseMatch(Wording Wording, int End, string? Country);
