namespace Terminus;

/// <summary>A document had problems where a caller asked for a sound one.</summary>
public sealed class DocumentException : Exception
{
    /// <summary>Says that a document has problems, without naming them.</summary>
    public DocumentException()
        : this("The document has problems.")
    {
    }

    /// <summary>Says what is wrong with a document.</summary>
    /// <param name="message">What is wrong.</param>
    public DocumentException(string message)
        : base(message)
    {
    }

    /// <summary>Says what is wrong with a document, and from what that follows.</summary>
    /// <param name="message">What is wrong.</param>
    /// <param name="innerException">The cause.</param>
    public DocumentException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    internal DocumentException(IReadOnlyList<DocumentProblem> problems)
        : base(problems.Count == 0 ? "The document says nothing." : string.Join("\n", problems))
        => Problems = ValueList.Of(problems);

    /// <summary>The problems, in the order of the document.</summary>
    public IReadOnlyList<DocumentProblem> Problems { get; } = ValueList<DocumentProblem>.Empty;
}
