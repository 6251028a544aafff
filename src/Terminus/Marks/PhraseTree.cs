namespace Terminus;

/// <summary>All fixed wordings as a tree of words; the longest one that stands in the text wins.</summary>
internal sealed class PhraseTree
{
    /// <summary>Stands in a phrase for any digits.</summary>
    internal const string AnyDigits = "#";

    private const string AnyCountry = "{country}";
    private const string AnyDemonym = "{demonym}";

    private readonly Node root = new();

    internal void Add(IEnumerable<string> keys, Wording wording)
    {
        Node node = root;
        foreach (string key in keys)
        {
            if (!node.Next.TryGetValue(key, out Node? next))
            {
                next = new Node();
                node.Next.Add(key, next);
            }

            node = next;
        }

        node.Wording ??= wording;
    }

    /// <summary>The longest wording that starts at a token, and the token behind it; a word of its own beats a class of words.</summary>
    internal PhraseMatch? Longest(IReadOnlyList<Token> tokens, int start) => Longest(root, tokens, start, start, null);

    private static PhraseMatch? Longest(Node node, IReadOnlyList<Token> tokens, int start, int at, string? office)
    {
        PhraseMatch? best = node.Wording is { } wording && at > start ? new PhraseMatch(wording, at, office) : null;
        int next = at == start ? at : SkipSoft(tokens, at);
        if (next >= tokens.Count)
        {
            return best;
        }

        Token token = tokens[next];
        foreach ((string key, string? itsOffice) in Keys(token))
        {
            if (node.Next.TryGetValue(key, out Node? child)
                && Longest(child, tokens, start, next + 1, itsOffice ?? office) is { } match
                && (best is null || match.End > best.End))
            {
                best = match;
            }
        }

        return best;
    }

    private static IEnumerable<(string Key, string? Office)> Keys(Token token)
    {
        if (token.Kind == TokenKind.Digits)
        {
            yield return (token.Text, null);
            if (token.Text.Length <= 2)
            {
                yield return (AnyDigits, null);
            }
        }
        else if (token.Kind == TokenKind.Word)
        {
            foreach (Lexeme lexeme in token.Lexemes.Length <= 3 ? token.Lexemes : [])
            {
                yield return (lexeme.Term, lexeme.Office);
                if (lexeme.Class is WordClass.Country or WordClass.Demonym)
                {
                    yield return (lexeme.Class == WordClass.Country ? AnyCountry : AnyDemonym, lexeme.Office);
                }
            }
        }
    }

    private static int SkipSoft(IReadOnlyList<Token> tokens, int at)
    {
        int next = at;
        while (next < tokens.Count && next < at + 3 && (tokens[next].IsSoft || tokens[next].IsSign('/') || tokens[next].Text == "THE"))
        {
            next++;
        }

        return next;
    }

    private sealed class Node
    {
        internal Dictionary<string, Node> Next { get; } = new(StringComparer.Ordinal);

        internal Wording? Wording { get; set; }
    }
}

/// <summary>A wording found in the text.</summary>
/// <param name="Wording">The wording.</param>
/// <param name="End">The token behind it.</param>
/// <param name="Country">The office of the country that the text names in it, or null.</param>
internal sealed record PhraseMatch(Wording Wording, int End, string? Country);
