namespace Terminus.Benchmarks.Marks;

/// <summary>The wordings of the reader's table as expressions: all of one kind are one, with the same beginnings written once.</summary>
internal sealed class VocabularyPhrases
{
    private readonly VocabularyWords words;
    private readonly string number;
    private readonly Dictionary<(string Kind, string Takes), Node> trees = [];

    internal VocabularyPhrases(VocabularyWords words, string number)
    {
        this.words = words;
        this.number = number;
        foreach (string[] row in MarkData.Rows("marks/wordings.csv"))
        {
            foreach (string phrase in row[5].Split('|', StringSplitOptions.RemoveEmptyEntries))
            {
                Add(Tree(row[1], row[4]), phrase.Split(' '), 0);
            }
        }
    }

    /// <summary>All wordings of a kind, and behind them what they take: one expression for each that is taken.</summary>
    internal IEnumerable<string> All(string kind)
        => trees.Where(t => t.Key.Kind == kind).Select(t => t.Value.Expression(words) + Taken(t.Key.Takes));

    private string Taken(string takes) => takes switch
    {
        "number" => "(?:" + VocabularyWords.Gap + number + ")?",
        "number!" => VocabularyWords.Gap + number,
        "year" => @"(?:[^/\d]{0,30}?\b(?:(?<year>\d{4})|(?<=')(?<late>\d\d)|(?<roman>M[MDCLXVI]{3,14}))\b)?",
        "karat" => @"(?:\W{0,3}(?:\d{1,2}[/\-]\d{1,3}\b\W{0,3})?\d{1,2}\s?KT?\b)?",
        _ => "",
    };

    private Node Tree(string kind, string takes)
    {
        if (!trees.TryGetValue((kind, takes), out Node? tree))
        {
            trees.Add((kind, takes), tree = new Node());
        }

        return tree;
    }

    private void Add(Node node, string[] phrase, int at)
    {
        // The number word behind a wording is part of the number.
        if (at == phrase.Length || (at > 0 && at == phrase.Length - 1 && phrase[at] is "NO?" or "NO"))
        {
            node.Ends = true;
            return;
        }

        string word = phrase[at];
        if (word.Length > 1 && word[^1] == '?')
        {
            Add(node, phrase, at + 1);
            word = word[..^1];
        }

        if (!node.Next.TryGetValue(word, out Node? next))
        {
            node.Next.Add(word, next = new Node());
        }

        Add(next, phrase, at + 1);
    }

    private sealed class Node
    {
        // A word with more than this behind it is written once, before its forms; others lie in one tree of letters.
        private const int Long = 120;

        internal Dictionary<string, Node> Next { get; } = new(StringComparer.Ordinal);

        internal bool Ends { get; set; }

        internal string Expression(VocabularyWords words)
        {
            var branches = new List<string>();
            var tree = new FormTree();
            foreach ((string word, Node next) in Next)
            {
                string rest = next.Rest(words);
                string[] forms = [.. word == "#" ? [] : words.FormsOf(word)];
                if (word == "#")
                {
                    branches.Add(@"\b\d{1,2}\b" + rest);
                }
                else if (rest.Length > Long && forms.Length > 1)
                {
                    branches.Add(words.Any(word) + rest);
                }
                else
                {
                    Add(tree, branches, forms, rest);
                }
            }

            branches.Add(tree.IsEmpty ? "" : @"\b" + tree);
            return "(?>" + string.Join('|', branches.Where(b => b.Length > 0)) + ")";
        }

        private static void Add(FormTree tree, List<string> branches, string[] forms, string rest)
        {
            foreach (string form in forms)
            {
                if (VocabularyWords.IsOfLetters(form))
                {
                    tree.Add(VocabularyWords.Letters(form), VocabularyWords.EndOfWord + rest);
                }
                else
                {
                    branches.Add(VocabularyWords.Sign(form) + rest);
                }
            }
        }

        private string Rest(VocabularyWords words) => Next.Count == 0 ? "" : "(?>" + VocabularyWords.Gap + Expression(words) + ")" + (Ends ? "?" : "");
    }
}
