namespace Terminus;

/// <summary>A document had problems where a caller asked for a sound one.</summary>
public sealed class DocumentException : Exception
{
    internal DocumentException(IReadOnlyList<DocumentProblem> problems)
        : base(problems.Count == 0 ? "The document says nothing." : string.Join("\n", problems))
        => Problems = ValueList.Of(problems);

    /// <summary>The problems, in the order of the document.</summary>
    public IReadOnlyList<DocumentProblem> Problems { get; }
}
