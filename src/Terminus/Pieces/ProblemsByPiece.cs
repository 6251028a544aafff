namespace Terminus;

/// <summary>Gives each piece of a list the problems that are its own.</summary>
internal static class ProblemsByPiece
{
    private const string Root = "$[";

    /// <summary>
    /// The pieces with their problems. A problem belongs to the piece its path starts with, and its path then starts at that piece; the
    /// rest, if any, is a last result without a piece. Each problem is looked at once.
    /// </summary>
    internal static List<DocumentResult<Piece>> Share(IReadOnlyList<Piece?> pieces, IReadOnlyList<DocumentProblem> problems)
    {
        var own = new List<DocumentProblem>?[pieces.Count];
        var rest = new List<DocumentProblem>();
        foreach (DocumentProblem problem in problems)
        {
            if (IndexOf(problem.Path, out int end) is { } index && index < own.Length)
            {
                (own[index] ??= []).Add(problem.WithPath(problem.Path.Remove(1, end - 1)));
            }
            else
            {
                rest.Add(problem);
            }
        }

        var results = new List<DocumentResult<Piece>>(pieces.Count + 1);
        for (int i = 0; i < own.Length; i++)
        {
            results.Add(new DocumentResult<Piece>(pieces[i], own[i] ?? []));
        }

        if (rest.Count > 0)
        {
            results.Add(new DocumentResult<Piece>(null, rest));
        }

        return results;
    }

    // The index in "$[12].marks", and where what follows it starts; null where the path is of the document itself.
    private static int? IndexOf(string path, out int end)
    {
        end = Root.Length;
        if (!path.StartsWith(Root, StringComparison.Ordinal))
        {
            return null;
        }

        int index = 0;
        while (end < path.Length && path[end] is >= '0' and <= '9')
        {
            index = (index * 10) + path[end++] - '0';
        }

        return end++ == Root.Length ? null : index;
    }
}
