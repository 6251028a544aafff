namespace Terminus;

/// <summary>Lists what is allowed, and names the nearest of it, for messages about a word that is not known.</summary>
internal static class Spelling
{
    private const int LongestCompared = 64;

    /// <summary>The words in quotes, with commas: <c>"id", "title"</c>.</summary>
    internal static string List(IEnumerable<string> words) => string.Join(", ", words.Select(w => "\"" + w + "\""));

    /// <summary><c> Did you mean "title"?</c>, or nothing where no word is near.</summary>
    internal static string Suggest(string word, IEnumerable<string> words)
        => Nearest(word, words) is { } nearest ? " Did you mean \"" + nearest + "\"?" : "";

    /// <summary>
    /// The word with the fewest changes of one letter (or swaps of two neighbours) from <paramref name="word"/>, case aside, or null where
    /// the nearest needs more than a third of the letters, and more than one.
    /// </summary>
    internal static string? Nearest(string word, IEnumerable<string> words)
    {
        if (word.Length > LongestCompared)
        {
            return null;
        }

        string sought = word.ToLowerInvariant();
        string? nearest = null;
        int least = Math.Max(1, word.Length / 3) + 1;
        foreach (string candidate in words)
        {
            if (Math.Abs(candidate.Length - word.Length) >= least || candidate.Length > LongestCompared)
            {
                continue;
            }

            int distance = Distance(sought, candidate.ToLowerInvariant(), least);
            if (distance < least)
            {
                least = distance;
                nearest = candidate;
            }
        }

        return nearest;
    }

    /// <summary>The optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours; of words that are too far, the bound.</summary>
    private static int Distance(string a, string b, int tooFar)
    {
        Span<int> before = stackalloc int[LongestCompared + 2];
        Span<int> last = stackalloc int[LongestCompared + 2];
        Span<int> row = stackalloc int[LongestCompared + 2];
        for (int j = 0; j <= b.Length; j++)
        {
            last[j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            // Letters that are farther from each other than the bound cannot pair, so only a band about the diagonal counts.
            int from = Math.Max(1, i - tooFar);
            int to = Math.Min(b.Length, i + tooFar);
            int least = row[from - 1] = from == 1 ? i : tooFar;
            for (int j = from; j <= to; j++)
            {
                int change = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(change, Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }

                least = Math.Min(least, row[j]);
            }

            if (least >= tooFar)
            {
                return tooFar;
            }

            row[to + 1] = tooFar;
            last.CopyTo(before);
            row.CopyTo(last);
        }

        return last[b.Length];
    }
}
