namespace Terminus;

/// <summary>One statement that is stamped on a thing: a patent's date or number, a wording, an origin, a metal.</summary>
/// <remarks>
/// A stamp with several dates or numbers gives one mark for each, of the same <see cref="Group"/>. Two marks are equal when all their
/// members are.
/// </remarks>
public sealed record Mark
{
    internal Mark(MarkKind kind, int start, int length, string text)
    {
        Kind = kind;
        Start = start;
        Length = length;
        Text = text;
    }

    /// <summary>What kind of statement it is.</summary>
    public MarkKind Kind { get; internal init; }

    /// <summary>The kind as documents name it, such as <c>patent-date</c>.</summary>
    public string KindName => MarkKindName.Of(Kind);

    /// <summary>The office as a code of WIPO standard ST.3, the country for an origin, or null where the mark does not tell.</summary>
    public string? Office { get; internal init; }

    /// <summary>The right, such as <c>utility</c> or <c>registered-design</c>; for a metal which metal; or null.</summary>
    public string? Right { get; internal init; }

    /// <summary>The number in plain digits with <c>?</c> for a lost digit and <c>*</c> for several, or null.</summary>
    public string? Number { get; internal init; }

    /// <summary>
    /// The date as EDTF (ISO 8601-2), such as <c>1894-04-17</c>, <c>1871-01</c>, <c>18X4-04-17</c> or <c>1889</c>; or null. Where several are possible it is the likeliest, and the
    /// others are in <see cref="Alternatives"/>.
    /// </summary>
    public string? Date { get; internal init; }

    /// <summary>The position of the first character in the inscription.</summary>
    public int Start { get; internal init; }

    /// <summary>The number of characters.</summary>
    public int Length { get; internal init; }

    /// <summary>The characters of the inscription that are the mark.</summary>
    public string Text { get; internal init; }

    /// <summary>The marks of one stamp share this number; numbers rise along the inscription.</summary>
    public int Group { get; internal init; }

    /// <summary>
    /// The nested windows, widest first. For a date or a number they hold the date of the right (issue or registration); for a wording
    /// they hold the time of making, as law or custom confines it. Empty where the mark says nothing of a date.
    /// </summary>
    public IReadOnlyList<StatedWindow> Windows { get; internal init => field = ValueList.Of(value); } = ValueList<StatedWindow>.Empty;

    /// <summary>Why it is read so, in the order of the reading.</summary>
    public IReadOnlyList<Reason> Reasons { get; internal init => field = ValueList.Of(value); } = ValueList<Reason>.Empty;

    /// <summary>The other readings of the same characters, likeliest first. They have no alternatives of their own.</summary>
    public IReadOnlyList<Mark> Alternatives { get; internal init => field = ValueList.Of(value); } = ValueList<Mark>.Empty;

    /// <summary>Whether the reading rests on a correction, a loss or an assumption, so that it is trusted less.</summary>
    public bool IsUncertain { get; internal init; }

    /// <summary>The id of the wording in the table of wordings that gave the period, or null.</summary>
    public string? WordingId { get; internal init; }

    /// <summary>Such as <c>patent-date US 1894-04-17 "PAT. APR. 17-94"</c>.</summary>
    public override string ToString()
        => string.Join(" ", new[] { KindName, Office, Right, Number, Date, "\"" + Text + "\"" }.Where(p => p is not null));
}
