namespace Terminus;

/// <summary>What was read from a document, with everything that is wrong with it.</summary>
/// <typeparam name="T">What the document describes.</typeparam>
public sealed class DocumentResult<T>
    where T : class
{
    internal DocumentResult(T? value, IReadOnlyList<DocumentProblem> problems)
    {
        Value = value;
        Problems = ValueList.Of(problems);
    }

    /// <summary>
    /// What could be read, or null where the document is not JSON or lacks what it cannot do without. Where there are problems, the
    /// values they concern are missing from it.
    /// </summary>
    public T? Value { get; }

    /// <summary>All problems in the order of the document; none for a sound document.</summary>
    public IReadOnlyList<DocumentProblem> Problems { get; }

    /// <summary>True when the document has no problem; then <see cref="Value"/> is not null.</summary>
    public bool IsSound => Problems.Count == 0 && Value is not null;

    /// <summary>The value of a sound document.</summary>
    /// <exception cref="DocumentException">The document has problems; the exception carries them.</exception>
    public T OrThrow() => IsSound ? Value! : throw new DocumentException(Problems);
}
