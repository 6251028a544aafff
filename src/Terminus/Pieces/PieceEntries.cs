namespace Terminus;

/// <summary>A part of a piece, and whether it belongs to the piece from the start.</summary>
public sealed record PiecePart
{
    /// <summary>Describes a part.</summary>
    /// <param name="part">Its name, such as "pin".</param>
    /// <param name="original">Whether it is original; a part that is not is dated but left out of the whole.</param>
    /// <param name="why">Why not, or null.</param>
    public PiecePart(string part, bool original = true, string? why = null)
    {
        Part = Guard.NotNull(part, nameof(part));
        Original = original;
        Why = why;
    }

    /// <summary>Its name.</summary>
    public string Part { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>Whether it is original.</summary>
    public bool Original { get; init; }

    /// <summary>Why not, or null.</summary>
    public string? Why { get; init; }
}

/// <summary>A mark on a piece, as stamped.</summary>
public sealed record PieceMark
{
    /// <summary>Describes a mark.</summary>
    /// <param name="text">Exactly what is there; <c>/</c> for a line break, <c>?</c> or <c>[ ]</c> for lost letters.</param>
    /// <param name="part">The part that bears it, or null.</param>
    /// <param name="patent">The id of the patent it is known to speak of, such as <c>US utility 2999999</c>, or null.</param>
    public PieceMark(string? text = null, string? part = null, string? patent = null)
    {
        Text = text;
        Part = part;
        Patent = patent;
    }

    /// <summary>Exactly what is there, or null where only its patent is known.</summary>
    public string? Text { get; init; }

    /// <summary>The part that bears it, or null.</summary>
    public string? Part { get; init; }

    /// <summary>The id of the patent it speaks of, or null.</summary>
    public string? Patent { get; init; }
}

/// <summary>A feature of the reference file that a piece shows, or is noted not to show.</summary>
public sealed record PieceFeature
{
    /// <summary>Describes a feature.</summary>
    /// <param name="feature">Its id in the reference file.</param>
    /// <param name="part">The part that shows it, or null.</param>
    /// <param name="absent">Whether it was looked for and is not there. That is kept, and says nothing of the date.</param>
    public PieceFeature(string feature, string? part = null, bool absent = false)
    {
        Feature = Guard.NotNull(feature, nameof(feature));
        Part = part;
        Absent = absent;
    }

    /// <summary>Its id in the reference file.</summary>
    public string Feature { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The part that shows it, or null.</summary>
    public string? Part { get; init; }

    /// <summary>Whether it was looked for and is not there.</summary>
    public bool Absent { get; init; }
}

/// <summary>A subject of the reference file that a piece depicts.</summary>
public sealed record PieceSubject
{
    /// <summary>Describes a subject.</summary>
    /// <param name="subject">Its id in the reference file.</param>
    /// <param name="part">The part that shows it, or null.</param>
    public PieceSubject(string subject, string? part = null)
    {
        Subject = Guard.NotNull(subject, nameof(subject));
        Part = part;
    }

    /// <summary>Its id in the reference file.</summary>
    public string Subject { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The part that shows it, or null.</summary>
    public string? Part { get; init; }
}

/// <summary>A date engraved or printed on a piece that is not a patent's.</summary>
public sealed record PieceInscription
{
    /// <summary>Describes an inscription.</summary>
    /// <param name="date">The date.</param>
    /// <param name="purpose">What it is the date of.</param>
    /// <param name="text">The words, or null.</param>
    /// <param name="part">The part that carries it, or null.</param>
    public PieceInscription(EdtfDate date, InscriptionPurpose purpose = InscriptionPurpose.Presentation, string? text = null, string? part = null)
    {
        Date = Guard.NotNull(date, nameof(date));
        Purpose = purpose;
        Text = text;
        Part = part;
    }

    /// <summary>The date.</summary>
    public EdtfDate Date { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>What it is the date of. In a document the member is <c>of</c>.</summary>
    public InscriptionPurpose Purpose { get; init; }

    /// <summary>The words, or null.</summary>
    public string? Text { get; init; }

    /// <summary>The part that carries it, or null.</summary>
    public string? Part { get; init; }
}

/// <summary>A record that shows that a piece existed.</summary>
public sealed record PieceRecord
{
    /// <summary>Describes a record.</summary>
    /// <param name="date">The date of the record.</param>
    /// <param name="what">What it is, or null.</param>
    /// <param name="boughtNew">Whether it shows that the piece was then sold as new.</param>
    /// <param name="part">The part it speaks of, or null.</param>
    public PieceRecord(EdtfDate date, string? what = null, bool boughtNew = false, string? part = null)
    {
        Date = Guard.NotNull(date, nameof(date));
        What = what;
        BoughtNew = boughtNew;
        Part = part;
    }

    /// <summary>The date of the record.</summary>
    public EdtfDate Date { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>What it is, or null.</summary>
    public string? What { get; init; }

    /// <summary>Whether it shows that the piece was then sold as new.</summary>
    public bool BoughtNew { get; init; }

    /// <summary>The part it speaks of, or null.</summary>
    public string? Part { get; init; }
}

/// <summary>A maker of the reference file whose name a piece bears.</summary>
public sealed record PieceMaker
{
    /// <summary>Describes a maker.</summary>
    /// <param name="maker">Its id in the reference file.</param>
    /// <param name="form">The form of the name as written, where the reference file dates it, or null.</param>
    /// <param name="address">The address as written, where the reference file dates it, or null.</param>
    /// <param name="part">The part that names it, or null.</param>
    public PieceMaker(string maker, string? form = null, string? address = null, string? part = null)
    {
        Maker = Guard.NotNull(maker, nameof(maker));
        Form = form;
        Address = address;
        Part = part;
    }

    /// <summary>Its id in the reference file.</summary>
    public string Maker { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>The form of the name as written, or null.</summary>
    public string? Form { get; init; }

    /// <summary>The address as written, or null.</summary>
    public string? Address { get; init; }

    /// <summary>The part that names it, or null.</summary>
    public string? Part { get; init; }
}

/// <summary>A dated catalogue page or advertisement that shows the same model.</summary>
public sealed record PieceAdvert
{
    /// <summary>Describes an advertisement.</summary>
    /// <param name="date">Its date.</param>
    /// <param name="what">What it is, or null.</param>
    /// <param name="model">The model it shows, or null for the piece itself. Advertisements of one model are one item.</param>
    /// <param name="part">The part it shows, or null.</param>
    public PieceAdvert(EdtfDate date, string? what = null, string? model = null, string? part = null)
    {
        Date = Guard.NotNull(date, nameof(date));
        What = what;
        Model = model;
        Part = part;
    }

    /// <summary>Its date.</summary>
    public EdtfDate Date { get; init => field = Guard.NotNull(value, nameof(value)); }

    /// <summary>What it is, or null.</summary>
    public string? What { get; init; }

    /// <summary>The model it shows, or null for the piece itself.</summary>
    public string? Model { get; init; }

    /// <summary>The part it shows, or null.</summary>
    public string? Part { get; init; }
}

/// <summary>A window of an opinion as written: dates, and how sure.</summary>
public sealed record PieceWindow
{
    /// <summary>Describes a window.</summary>
    /// <param name="notBefore">From the earliest day of this date, or null for an open start.</param>
    /// <param name="notAfter">To the latest day of this date, or null for an open end.</param>
    /// <param name="confidence">From 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence lies outside [0, 1].</exception>
    public PieceWindow(EdtfDate? notBefore, EdtfDate? notAfter, double confidence)
    {
        NotBefore = notBefore;
        NotAfter = notAfter;
        Confidence = confidence;
    }

    /// <summary>From the earliest day of this date, or null.</summary>
    public EdtfDate? NotBefore { get; init; }

    /// <summary>To the latest day of this date, or null.</summary>
    public EdtfDate? NotAfter { get; init; }

    /// <summary>From 0 to 1.</summary>
    public double Confidence { get; init => field = Guard.Confidence(value, nameof(value)); }
}

/// <summary>Somebody's opinion of a piece.</summary>
public sealed record PieceOpinion
{
    /// <summary>Describes an opinion.</summary>
    /// <param name="windows">Nested windows, widest first.</param>
    /// <param name="by">Who says so, or null.</param>
    /// <param name="restsOn">What it rests on: ids of the reference file, or words. Opinions that rest on one thing are one item.</param>
    /// <param name="label">What kind of opinion it is, or null.</param>
    /// <param name="part">The part it speaks of, or null.</param>
    public PieceOpinion(
        IEnumerable<PieceWindow> windows, string? by = null, IEnumerable<string>? restsOn = null, string? label = null, string? part = null)
    {
        Windows = ValueList.Of(Guard.NotNull(windows, nameof(windows)));
        By = by;
        RestsOn = ValueList.Of(restsOn);
        Label = label;
        Part = part;
    }

    /// <summary>Nested windows, widest first.</summary>
    public IReadOnlyList<PieceWindow> Windows { get; init => field = ValueList.Of(value); } = ValueList<PieceWindow>.Empty;

    /// <summary>Who says so, or null.</summary>
    public string? By { get; init; }

    /// <summary>What it rests on; may be empty.</summary>
    public IReadOnlyList<string> RestsOn { get; init => field = ValueList.Of(value); } = ValueList<string>.Empty;

    /// <summary>What kind of opinion it is, or null.</summary>
    public string? Label { get; init; }

    /// <summary>The part it speaks of, or null.</summary>
    public string? Part { get; init; }
}
