namespace Terminus;

/// <summary>Where a value stands in a document, for what is noticed only after the document has been read.</summary>
internal sealed record DocumentPlace(string? File, int Line, int Column, string Path)
{
    /// <summary>A problem with the value at this place, or with something below it.</summary>
    /// <param name="message">What was found and what is allowed.</param>
    /// <param name="below">The rest of the path, such as <c>.patents[0]</c>, or nothing.</param>
    internal DocumentProblem Problem(string message, string below = "") => new(message, Path + below, File, Line, Column);
}
