namespace Terminus;

/// <summary>
/// One thing that is wrong with a document: where it stands, what was found and what is allowed.
/// </summary>
/// <remarks>Two problems are equal when place and message are. Reading goes on after a problem, so a document gives all it has at once.</remarks>
public sealed record DocumentProblem
{
    /// <summary>States a problem.</summary>
    /// <param name="message">What was found and what is allowed, as an English sentence.</param>
    /// <param name="path">The JSON path of the value, <c>$</c> for the whole document.</param>
    /// <param name="file">The name the document was read under, or null where it has none.</param>
    /// <param name="line">The line, from 1; 0 where it is not known.</param>
    /// <param name="column">The column in characters, from 1; 0 where it is not known.</param>
    public DocumentProblem(string message, string path = "$", string? file = null, int line = 0, int column = 0)
    {
        Message = Guard.NotNull(message, nameof(message));
        Path = Guard.NotNull(path, nameof(path));
        File = file;
        Line = line;
        Column = column;
    }

    /// <summary>The name the document was read under, or null where it has none.</summary>
    public string? File { get; }

    /// <summary>The line on which the value starts, from 1; 0 where it is not known.</summary>
    public int Line { get; }

    /// <summary>The column at which the value starts, in characters (Unicode code points), from 1; 0 where it is not known.</summary>
    public int Column { get; }

    /// <summary>The JSON path of the value, such as <c>$.marks[0].text</c>; <c>$</c> is the whole document.</summary>
    public string Path { get; }

    /// <summary>What was found and what is allowed, as an English sentence. The words may be improved in any version.</summary>
    public string Message { get; }

    /// <summary>The same problem under another path, as where a piece is lifted out of a list.</summary>
    internal DocumentProblem WithPath(string path) => new(Message, path, File, Line, Column);

    /// <summary>Such as <c>box.json:3:12: $.marks[0].text: …</c>.</summary>
    public override string ToString()
        => (File is null ? "" : File + ":") + (Line == 0 ? "" : DateText.Digits(Line) + ":" + (Column == 0 ? "" : DateText.Digits(Column) + ":"))
            + (File is null && Line == 0 ? "" : " ") + Path + ": " + Message;
}
