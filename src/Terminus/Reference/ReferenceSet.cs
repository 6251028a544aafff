namespace Terminus;

/// <summary>
/// What is known, in layers: the built-in reference and files over it. A later layer replaces an entry by its id, and says so.
/// </summary>
/// <remarks>Immutable and safe on any thread. Looking up by id takes the same time however large the set is.</remarks>
public sealed class ReferenceSet
{
    private readonly EntryTable<FeatureEntry> features;
    private readonly EntryTable<QuestionEntry> questions;
    private readonly EntryTable<PatentEntry> patents;
    private readonly EntryTable<MakerEntry> makers;
    private readonly EntryTable<AdvertEntry> adverts;
    private readonly EntryTable<MarkEntry> marks;
    private readonly Lazy<ILookup<string, FeatureEntry>> byPatent;
    private readonly Lazy<ILookup<string, FeatureEntry>> byQuestion;
    private readonly Lazy<ILookup<string, AdvertEntry>> byModel;

    private ReferenceSet(
        EntryTable<FeatureEntry> features,
        EntryTable<QuestionEntry> questions,
        EntryTable<PatentEntry> patents,
        EntryTable<MakerEntry> makers,
        EntryTable<AdvertEntry> adverts,
        EntryTable<MarkEntry> marks,
        IEnumerable<ReferenceLayer> layers,
        IEnumerable<ReferenceReplacement> replacements)
    {
        this.features = features;
        this.questions = questions;
        this.patents = patents;
        this.makers = makers;
        this.adverts = adverts;
        this.marks = marks;
        Layers = ValueList.Of(layers);
        Replacements = ValueList.Of(replacements);
        byPatent = new(() => Features.SelectMany(f => f.Patents, (f, p) => (f, p)).ToLookup(x => x.p, x => x.f, StringComparer.Ordinal));
        byQuestion = new(() => Features.Where(f => f.Question is not null).ToLookup(f => f.Question!, StringComparer.Ordinal));
        byModel = new(() => Adverts.Where(a => a.Model is not null && a.Date is not null).ToLookup(a => a.Model!, StringComparer.Ordinal));
    }

    /// <summary>No layer at all.</summary>
    public static ReferenceSet Empty { get; } = new(
        EntryTable<FeatureEntry>.Empty,
        EntryTable<QuestionEntry>.Empty,
        EntryTable<PatentEntry>.Empty,
        EntryTable<MakerEntry>.Empty,
        EntryTable<AdvertEntry>.Empty,
        EntryTable<MarkEntry>.Empty,
        [],
        []);

    /// <summary>The reference that comes with the library, read when it is first asked for.</summary>
    public static ReferenceSet BuiltIn => BuiltInReference.Set;

    /// <summary>The layers, lowest first.</summary>
    public IReadOnlyList<ReferenceLayer> Layers { get; }

    /// <summary>What later layers replaced in lower ones, layer by layer.</summary>
    public IReadOnlyList<ReferenceReplacement> Replacements { get; }

    /// <summary>All features that count.</summary>
    public IReadOnlyList<FeatureEntry> Features => features.All;

    /// <summary>All questions that count.</summary>
    public IReadOnlyList<QuestionEntry> Questions => questions.All;

    /// <summary>All patents that count.</summary>
    public IReadOnlyList<PatentEntry> Patents => patents.All;

    /// <summary>All makers that count.</summary>
    public IReadOnlyList<MakerEntry> Makers => makers.All;

    /// <summary>All adverts that count.</summary>
    public IReadOnlyList<AdvertEntry> Adverts => adverts.All;

    /// <summary>All marks that count.</summary>
    public IReadOnlyList<MarkEntry> Marks => marks.All;

    /// <summary>This set with a file over it, which replaces entries of the same kind and id.</summary>
    /// <param name="file">The file.</param>
    public ReferenceSet With(ReferenceFile file)
    {
        Guard.NotNull(file, nameof(file));
        var layer = new ReferenceLayer(file.Name, file.Version);
        var replaced = new List<ReferenceReplacement>();
        void Note(ReferenceEntry old, ReferenceEntry by) => replaced.Add(new ReferenceReplacement(old, by, layer));
        return new ReferenceSet(
            features.With(file.Features, Note),
            questions.With(file.Questions, Note),
            patents.With(file.Patents, Note),
            makers.With(file.Makers, Note),
            adverts.With(file.Adverts, Note),
            marks.With(file.Marks, Note),
            Layers.Append(layer),
            Replacements.Concat(replaced));
    }

    /// <summary>The feature of an id, or null.</summary>
    /// <param name="id">The id; case counts.</param>
    public FeatureEntry? Feature(string? id) => features.Find(id);

    /// <summary>The question of an id, or null.</summary>
    /// <param name="id">The id; case counts.</param>
    public QuestionEntry? Question(string? id) => questions.Find(id);

    /// <summary>The patent of an id such as <c>US utility 2999999</c>, or null.</summary>
    /// <param name="id">The id; case counts.</param>
    public PatentEntry? Patent(string? id) => patents.Find(id);

    /// <summary>The maker of an id, or null.</summary>
    /// <param name="id">The id; case counts.</param>
    public MakerEntry? Maker(string? id) => makers.Find(id);

    /// <summary>The advert of an id, or null.</summary>
    /// <param name="id">The id; case counts.</param>
    public AdvertEntry? Advert(string? id) => adverts.Find(id);

    /// <summary>The mark of an id, or null.</summary>
    /// <param name="id">The id; case counts.</param>
    public MarkEntry? Mark(string? id) => marks.Find(id);

    /// <summary>The features that rest on a patent.</summary>
    /// <param name="patentId">The id of the patent.</param>
    public IEnumerable<FeatureEntry> FeaturesOfPatent(string patentId) => byPatent.Value[Guard.NotNull(patentId, nameof(patentId))];

    /// <summary>The features that answer a question, which exclude each other on one part.</summary>
    /// <param name="questionId">The id of the question.</param>
    public IEnumerable<FeatureEntry> Answers(string questionId) => byQuestion.Value[Guard.NotNull(questionId, nameof(questionId))];

    /// <summary>The dated adverts of a model.</summary>
    internal IEnumerable<AdvertEntry> AdvertsOfModel(string model) => byModel.Value[model];
}
