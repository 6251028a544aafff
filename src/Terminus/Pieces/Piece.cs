namespace Terminus;

/// <summary>A piece as somebody described it: what is on it and what is known of it, before any of that is read or weighed.</summary>
/// <remarks>
/// All members but the id may be empty. A lot (a pair, a set, a piece and its box) is a piece whose parts carry its members. Two
/// pieces are equal when all their members are.
/// </remarks>
public sealed record Piece
{
    /// <summary>Describes a piece.</summary>
    /// <param name="id">The inventory number or other name.</param>
    /// <param name="title">What it is, in words, or null.</param>
    /// <param name="objectKind">The kind of object, which decides what questions apply, or null.</param>
    /// <param name="stated">Somebody's date for it, to be tested, or null.</param>
    /// <param name="parts">Its parts, or null for none.</param>
    /// <param name="marks">Its marks, or null for none.</param>
    /// <param name="features">Its features, or null for none.</param>
    /// <param name="subjects">What it depicts, or null for nothing.</param>
    /// <param name="inscriptions">Dates on it that are not patents', or null for none.</param>
    /// <param name="records">Records of it, or null for none.</param>
    /// <param name="makers">Makers it names, or null for none.</param>
    /// <param name="adverts">Advertisements of its model, or null for none.</param>
    /// <param name="opinions">Opinions of it, or null for none.</param>
    public Piece(
        string id,
        string? title = null,
        string? objectKind = null,
        EdtfDate? stated = null,
        IEnumerable<PiecePart>? parts = null,
        IEnumerable<PieceMark>? marks = null,
        IEnumerable<PieceFeature>? features = null,
        IEnumerable<PieceSubject>? subjects = null,
        IEnumerable<PieceInscription>? inscriptions = null,
        IEnumerable<PieceRecord>? records = null,
        IEnumerable<PieceMaker>? makers = null,
        IEnumerable<PieceAdvert>? adverts = null,
        IEnumerable<PieceOpinion>? opinions = null)
    {
        Id = Guard.NotNull(id, nameof(id));
        Title = title;
        ObjectKind = objectKind;
        Stated = stated;
        Parts = ValueList.Of(parts);
        Marks = ValueList.Of(marks);
        Features = ValueList.Of(features);
        Subjects = ValueList.Of(subjects);
        Inscriptions = ValueList.Of(inscriptions);
        Records = ValueList.Of(records);
        Makers = ValueList.Of(makers);
        Adverts = ValueList.Of(adverts);
        Opinions = ValueList.Of(opinions);
    }

    /// <summary>The inventory number or other name.</summary>
    public string Id { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>What it is, in words, or null.</summary>
    public string? Title { get; init; }

    /// <summary>The kind of object, such as <c>cuff fastening</c>, or null. In a document the member is <c>object</c>.</summary>
    public string? ObjectKind { get; init; }

    /// <summary>Somebody's date for it, to be tested, or null.</summary>
    public EdtfDate? Stated { get; init; }

    /// <summary>Its parts.</summary>
    public IReadOnlyList<PiecePart> Parts { get; init => field = ValueList.Of(value); } = ValueList<PiecePart>.Empty;

    /// <summary>Its marks.</summary>
    public IReadOnlyList<PieceMark> Marks { get; init => field = ValueList.Of(value); } = ValueList<PieceMark>.Empty;

    /// <summary>Its features.</summary>
    public IReadOnlyList<PieceFeature> Features { get; init => field = ValueList.Of(value); } = ValueList<PieceFeature>.Empty;

    /// <summary>What it depicts.</summary>
    public IReadOnlyList<PieceSubject> Subjects { get; init => field = ValueList.Of(value); } = ValueList<PieceSubject>.Empty;

    /// <summary>Dates on it that are not patents'.</summary>
    public IReadOnlyList<PieceInscription> Inscriptions { get; init => field = ValueList.Of(value); } = ValueList<PieceInscription>.Empty;

    /// <summary>Records of it.</summary>
    public IReadOnlyList<PieceRecord> Records { get; init => field = ValueList.Of(value); } = ValueList<PieceRecord>.Empty;

    /// <summary>Makers it names.</summary>
    public IReadOnlyList<PieceMaker> Makers { get; init => field = ValueList.Of(value); } = ValueList<PieceMaker>.Empty;

    /// <summary>Advertisements of its model.</summary>
    public IReadOnlyList<PieceAdvert> Adverts { get; init => field = ValueList.Of(value); } = ValueList<PieceAdvert>.Empty;

    /// <summary>Opinions of it.</summary>
    public IReadOnlyList<PieceOpinion> Opinions { get; init => field = ValueList.Of(value); } = ValueList<PieceOpinion>.Empty;

    /// <summary>Reads one piece from a JSON document.</summary>
    /// <param name="utf8">The document.</param>
    /// <param name="fileName">The name to show in problems, or null.</param>
    /// <returns>The piece with everything that could be read, and all problems; no piece where the document is not JSON or has no id.</returns>
    public static DocumentResult<Piece> Read(ReadOnlySpan<byte> utf8, string? fileName = null) => PieceReader.ReadOne(utf8, fileName);

    /// <summary>Reads one piece from a JSON document.</summary>
    /// <param name="json">The document.</param>
    /// <param name="fileName">The name to show in problems, or null.</param>
    /// <returns>The piece with everything that could be read, and all problems; no piece where the document is not JSON or has no id.</returns>
    public static DocumentResult<Piece> Read(string json, string? fileName = null)
        => Read(System.Text.Encoding.UTF8.GetBytes(Guard.NotNull(json, nameof(json))).AsSpan(), fileName);

    /// <summary>Reads a document that holds one piece or a list of pieces; each has its own problems, with paths from its own root.</summary>
    /// <param name="utf8">The document.</param>
    /// <param name="fileName">The name to show in problems, or null.</param>
    public static IReadOnlyList<DocumentResult<Piece>> ReadAll(ReadOnlySpan<byte> utf8, string? fileName = null)
        => PieceReader.ReadAll(utf8, fileName);

    /// <summary>Reads a document that holds one piece or a list of pieces; each has its own problems, with paths from its own root.</summary>
    /// <param name="json">The document.</param>
    /// <param name="fileName">The name to show in problems, or null.</param>
    public static IReadOnlyList<DocumentResult<Piece>> ReadAll(string json, string? fileName = null)
        => ReadAll(System.Text.Encoding.UTF8.GetBytes(Guard.NotNull(json, nameof(json))).AsSpan(), fileName);

    /// <summary>The piece as a JSON document, which reads back as an equal piece.</summary>
    public string ToJson() => PieceWriter.ToJson(this);
}
