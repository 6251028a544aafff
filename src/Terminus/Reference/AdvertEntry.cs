namespace Terminus;

/// <summary>A dated advert or catalogue page that shows a model or a feature.</summary>
public sealed record AdvertEntry : ReferenceEntry
{
    /// <summary>States an advert.</summary>
    /// <param name="id">The stable id.</param>
    /// <param name="date">When it appeared, or null.</param>
    /// <param name="what">Where: the paper or catalogue and the page.</param>
    /// <param name="model">The model it shows, or null.</param>
    /// <param name="feature">The id of the feature it shows, or null.</param>
    /// <param name="maker">The id of the maker, or null.</param>
    /// <param name="source">Where this comes from, or null.</param>
    /// <param name="origin">Whether it was read there, recalled or made up.</param>
    /// <param name="note">What else is to be known, or null.</param>
    public AdvertEntry(
        string id,
        EdtfDate? date = null,
        string? what = null,
        string? model = null,
        string? feature = null,
        string? maker = null,
        string? source = null,
        ReferenceOrigin origin = ReferenceOrigin.Source,
        string? note = null)
        : base(id, source, origin, note)
    {
        Date = date;
        What = what;
        Model = model;
        Feature = feature;
        Maker = maker;
    }

    /// <inheritdoc/>
    public override ReferenceKind Kind => ReferenceKind.Advert;

    /// <summary>When it appeared, or null where not known.</summary>
    public EdtfDate? Date { get; init; }

    /// <summary>The paper or catalogue and the page, or null.</summary>
    public string? What { get; init; }

    /// <summary>The model it shows, or null. Adverts of one model are one item of evidence, first to last.</summary>
    public string? Model { get; init; }

    /// <summary>The id of the feature it shows, or null.</summary>
    public string? Feature { get; init; }

    /// <summary>The id of the maker, or null.</summary>
    public string? Maker { get; init; }
}
