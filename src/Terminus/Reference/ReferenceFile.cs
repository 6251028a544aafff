using System.Text;

namespace Terminus;

/// <summary>One reference document: what somebody knows of features, patents, makers, adverts and marks, under a name and a version.</summary>
/// <remarks>
/// Immutable, and equal by content. Layers of several files make a <see cref="ReferenceSet"/>; <see cref="ReferenceCheck"/> looks for
/// entries that make no sense.
/// </remarks>
public sealed record ReferenceFile
{
    /// <summary>Puts entries under a name and a version.</summary>
    /// <param name="name">The name, which every result that used the file says.</param>
    /// <param name="version">The version, which every result that used the file says.</param>
    /// <param name="features">Features, or null for none.</param>
    /// <param name="questions">Questions, or null for none.</param>
    /// <param name="patents">Patents and designs, or null for none.</param>
    /// <param name="makers">Makers, or null for none.</param>
    /// <param name="adverts">Adverts and catalogue pages, or null for none.</param>
    /// <param name="marks">Marks and wordings, or null for none.</param>
    public ReferenceFile(
        string name,
        string version,
        IEnumerable<FeatureEntry>? features = null,
        IEnumerable<QuestionEntry>? questions = null,
        IEnumerable<PatentEntry>? patents = null,
        IEnumerable<MakerEntry>? makers = null,
        IEnumerable<AdvertEntry>? adverts = null,
        IEnumerable<MarkEntry>? marks = null)
    {
        Name = name;
        Version = version;
        Features = ValueList.Of(features);
        Questions = ValueList.Of(questions);
        Patents = ValueList.Of(patents);
        Makers = ValueList.Of(makers);
        Adverts = ValueList.Of(adverts);
        Marks = ValueList.Of(marks);
    }

    /// <summary>The name of the file.</summary>
    public string Name { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The version of its content.</summary>
    public string Version { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The features, in the order of the document.</summary>
    public IReadOnlyList<FeatureEntry> Features { get; init => field = ValueList.Of(value); } = ValueList<FeatureEntry>.Empty;

    /// <summary>The questions that features answer.</summary>
    public IReadOnlyList<QuestionEntry> Questions { get; init => field = ValueList.Of(value); } = ValueList<QuestionEntry>.Empty;

    /// <summary>The patents and designs.</summary>
    public IReadOnlyList<PatentEntry> Patents { get; init => field = ValueList.Of(value); } = ValueList<PatentEntry>.Empty;

    /// <summary>The makers.</summary>
    public IReadOnlyList<MakerEntry> Makers { get; init => field = ValueList.Of(value); } = ValueList<MakerEntry>.Empty;

    /// <summary>The adverts and catalogue pages.</summary>
    public IReadOnlyList<AdvertEntry> Adverts { get; init => field = ValueList.Of(value); } = ValueList<AdvertEntry>.Empty;

    /// <summary>The marks and wordings.</summary>
    public IReadOnlyList<MarkEntry> Marks { get; init => field = ValueList.Of(value); } = ValueList<MarkEntry>.Empty;

    /// <summary>All entries, kind by kind.</summary>
    internal IEnumerable<ReferenceEntry> Entries
        => Features.Concat<ReferenceEntry>(Questions).Concat(Patents).Concat(Makers).Concat(Adverts).Concat(Marks);

    /// <summary>Reads a reference document strictly; everything that is wrong with it is found at once.</summary>
    /// <param name="utf8">The document in UTF-8, with or without a byte order mark.</param>
    /// <param name="fileName">The name to show in problems, or null.</param>
    public static DocumentResult<ReferenceFile> Read(ReadOnlySpan<byte> utf8, string? fileName = null) => ReferenceReader.Read(utf8, fileName);

    /// <summary>Reads a reference document strictly; everything that is wrong with it is found at once.</summary>
    /// <param name="json">The document.</param>
    /// <param name="fileName">The name to show in problems, or null.</param>
    public static DocumentResult<ReferenceFile> Read(string json, string? fileName = null)
        => ReferenceReader.Read(Encoding.UTF8.GetBytes(Guard.NotNull(json, nameof(json))), fileName);

    /// <summary>The document as indented JSON. Reading it gives an equal file.</summary>
    public string ToJson() => ReferenceWriter.Write(this);
}
