namespace Terminus;

/// <summary>
/// A feature that came in and went out: a fastening, a material, a subject that first existed in a known year.
/// </summary>
/// <remarks>The dates are usage unless the basis says more; a date that is not known is null and leaves its side open.</remarks>
public sealed record FeatureEntry : ReferenceEntry
{
    /// <summary>States what is known of a feature.</summary>
    /// <param name="id">The stable id, such as <c>cuff.toggle</c>.</param>
    /// <param name="name">A short name for people.</param>
    /// <param name="group">The group of things it belongs to, or null.</param>
    /// <param name="description">How to know it when it is seen, or null.</param>
    /// <param name="introduced">When it came in, or null.</param>
    /// <param name="common">When it grew common, or null.</param>
    /// <param name="fading">When it began to fade, or null.</param>
    /// <param name="gone">By when it was gone, or null.</param>
    /// <param name="basis">What the introduction rests on.</param>
    /// <param name="grade">How well it is founded.</param>
    /// <param name="endedBy">What ended it: usage of the trade, or a law or an event.</param>
    /// <param name="patentOfWiderClass">Whether its patents are only examples of a wider class, so that the introduction counts as trade.</param>
    /// <param name="patents">The ids of the patents it rests on, or null for none.</param>
    /// <param name="question">The id of the question it answers, or null.</param>
    /// <param name="sightings">Dated sightings of it, or null for none.</param>
    /// <param name="estimate">Which ends are estimated from the sightings; a date given for such an end gives way to the estimate.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="origin">Whether it was read there, recalled or made up.</param>
    /// <param name="note">What else is to be known, or null.</param>
    public FeatureEntry(
        string id,
        string name,
        string? group = null,
        string? description = null,
        EdtfDate? introduced = null,
        EdtfDate? common = null,
        EdtfDate? fading = null,
        EdtfDate? gone = null,
        EvidenceBasis basis = EvidenceBasis.Trade,
        EvidenceGrade grade = EvidenceGrade.Medium,
        EvidenceBasis endedBy = EvidenceBasis.Trade,
        bool patentOfWiderClass = false,
        IEnumerable<string>? patents = null,
        string? question = null,
        IEnumerable<Sighting>? sightings = null,
        EstimatedEnds estimate = EstimatedEnds.None,
        string? source = null,
        ReferenceOrigin origin = ReferenceOrigin.Source,
        string? note = null)
        : base(id, source, origin, note)
    {
        Name = name;
        Group = group;
        Description = description;
        Introduced = introduced;
        Common = common;
        Fading = fading;
        Gone = gone;
        Basis = basis;
        Grade = grade;
        EndedBy = endedBy;
        PatentOfWiderClass = patentOfWiderClass;
        Patents = ValueList.Of(patents);
        Question = question;
        Sightings = ValueList.Of(sightings);
        Estimate = estimate;
        FeatureEntry estimated = FeatureEstimate.Apply(this);
        (Introduced, Gone) = (estimated.Introduced, estimated.Gone);
    }

    /// <inheritdoc/>
    public override ReferenceKind Kind => ReferenceKind.Feature;

    /// <summary>A short name for people.</summary>
    public string Name { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The group of things it belongs to, such as "brooch fitting", or null.</summary>
    public string? Group { get; init; }

    /// <summary>How to know it when it is seen, or null.</summary>
    public string? Description { get; init; }

    /// <summary>When it came in: no piece that shows it is older than the first day of this. Null where not known.</summary>
    public EdtfDate? Introduced { get; init; }

    /// <summary>When it grew common, or null.</summary>
    public EdtfDate? Common { get; init; }

    /// <summary>When it began to fade, or null.</summary>
    public EdtfDate? Fading { get; init; }

    /// <summary>By when it was gone, or null.</summary>
    public EdtfDate? Gone { get; init; }

    /// <summary>What the introduction rests on, as stated.</summary>
    public EvidenceBasis Basis { get; init; }

    /// <summary>How well the entry is founded, as stated.</summary>
    public EvidenceGrade Grade { get; init; }

    /// <summary>What ended it: <see cref="EvidenceBasis.Law"/> or <see cref="EvidenceBasis.Event"/> make the end firm.</summary>
    public EvidenceBasis EndedBy { get; init; }

    /// <summary>Whether its patents are only examples of a wider class; others may be older, so the introduction counts as trade.</summary>
    public bool PatentOfWiderClass { get; init; }

    /// <summary>The ids of the patents it rests on; the piece's own mark of one of them is the same observation.</summary>
    public IReadOnlyList<string> Patents { get; init => field = ValueList.Of(value); } = ValueList<string>.Empty;

    /// <summary>The id of the question it answers, or null. Two answers to one question about one part exclude each other.</summary>
    public string? Question { get; init; }

    /// <summary>Dated sightings, kept so that a later one estimates the feature anew.</summary>
    public IReadOnlyList<Sighting> Sightings { get; init => field = ValueList.Of(value); } = ValueList<Sighting>.Empty;

    /// <summary>
    /// Which ends are estimated from <see cref="Sightings"/>: their dates are set anew, from the bound at 0.9 to the extreme sighting, each
    /// time the entry is read or a sighting is added.
    /// </summary>
    public EstimatedEnds Estimate { get; init; }

    /// <summary>The basis as it counts: one patent of a wider class, or an estimate from sightings, is usage of the trade.</summary>
    internal EvidenceBasis CountsAs => PatentOfWiderClass || IsEstimated(EstimatedEnds.Introduced) ? EvidenceBasis.Trade : Basis;

    /// <summary>The grade as it counts: what is recalled is of low grade.</summary>
    internal EvidenceGrade GradeCounted => Origin == ReferenceOrigin.Memory ? EvidenceGrade.Low : Grade;

    /// <summary>Whether a law or an event ended it on a date that is stated, not estimated.</summary>
    internal bool IsEndedByFact => EndedBy is EvidenceBasis.Law or EvidenceBasis.Event && !IsEstimated(EstimatedEnds.Gone);

    /// <summary>The same feature with one more sighting, and its estimated ends estimated anew.</summary>
    /// <param name="sighting">The sighting.</param>
    public FeatureEntry WithSighting(Sighting sighting) => WithSightings([Guard.NotNull(sighting, nameof(sighting))]);

    /// <summary>The same feature with more sightings, each kept once, and its estimated ends estimated anew.</summary>
    /// <param name="sightings">The sightings. They are kept as sightings of this feature, whatever id they name.</param>
    public FeatureEntry WithSightings(IEnumerable<Sighting> sightings)
        => FeatureEstimate.Apply(this with
        {
            Sightings = ValueList.Of(Sightings.Concat(Guard.NotNull(sightings, nameof(sightings)).Select(s => new Sighting(s.Date, s.Source))).Distinct()),
        });

    /// <summary>The same feature with ends estimated from its sightings, now and at each later sighting.</summary>
    /// <param name="ends">The ends to estimate; the others keep the dates they have.</param>
    public FeatureEntry WithEstimate(EstimatedEnds ends) => FeatureEstimate.Apply(this with { Estimate = ends });

    private bool IsEstimated(EstimatedEnds end) => (Estimate & end) != 0;
}
