namespace Terminus;

/// <summary>One statement that is stamped on a thing: a patent's date or number, a wording, an origin, a metal.</summary>
/// <remarks>
/// A stamp with several dates or numbers gives one mark for each, of the same <see cref="Group"/>. Two marks are equal when all their
/// members are.
/// </remarks>
public sealed record Mark
{
    private readonly string inscription;
    private readonly MarkDraft found;
    private readonly RegisterSet registers;
    private string? text;
    private MarkDetails? details;

    /// <summary>What the grammar found; what follows from it in registers and wordings is worked out when somebody asks.</summary>
    internal Mark(string inscription, MarkDraft found, RegisterSet registers)
    {
        this.inscription = inscription;
        this.found = found;
        this.registers = registers;
        Date = MarkDate.Of(found, out bool isUncertain);
        IsUncertain = isUncertain;
    }

    /// <summary>Another reading of the same characters.</summary>
    internal Mark(Mark mark, MarkDraft found, string? date, MarkDetails details)
    {
        inscription = mark.inscription;
        registers = mark.registers;
        this.found = found;
        this.details = details;
        Date = date;
        IsUncertain = found.IsInDoubt;
    }

    /// <summary>What kind of statement it is.</summary>
    public MarkKind Kind => found.Kind;

    /// <summary>The kind as documents name it, such as <c>patent-date</c>.</summary>
    public string KindName => MarkKindName.Of(Kind);

    /// <summary>The office as a code of WIPO standard ST.3, the country for an origin, or null where the mark does not tell.</summary>
    public string? Office => found.Office;

    /// <summary>The right, such as <c>utility</c> or <c>registered-design</c>; for a metal which metal; or null.</summary>
    public string? Right => found.Right;

    /// <summary>The number in plain digits with <c>?</c> for a lost digit and <c>*</c> for several, or null.</summary>
    public string? Number => found.Number?.Digits;

    /// <summary>
    /// The date as EDTF (ISO 8601-2), such as <c>1894-04-17</c>, <c>1871-01</c>, <c>18X4-04-17</c> or <c>1889</c>; or null. Where several are possible it is the likeliest, and the
    /// others are in <see cref="Alternatives"/>.
    /// </summary>
    public string? Date { get; }

    /// <summary>The position of the first character in the inscription.</summary>
    public int Start => found.Start;

    /// <summary>The number of characters.</summary>
    public int Length => found.End - found.Start;

    /// <summary>The characters of the inscription that are the mark.</summary>
    public string Text => text ??= inscription.Substring(Start, Length);

    /// <summary>The marks of one stamp share this number; numbers rise along the inscription.</summary>
    public int Group => found.Group;

    /// <summary>
    /// The nested windows, widest first. For a date or a number they hold the date of the right (issue or registration); for a wording
    /// they hold the time of making, as law or custom confines it. Empty where the mark says nothing of a date.
    /// </summary>
    public IReadOnlyList<StatedWindow> Windows => Details.Windows;

    /// <summary>Why it is read so, in the order of the reading.</summary>
    public IReadOnlyList<Reason> Reasons => Details.Reasons;

    /// <summary>The other readings of the same characters, likeliest first. They have no alternatives of their own.</summary>
    public IReadOnlyList<Mark> Alternatives => Details.Alternatives;

    /// <summary>Whether the reading rests on a correction, a loss or an assumption, so that it is trusted less.</summary>
    public bool IsUncertain { get; }

    /// <summary>The id of the wording in the table of wordings that gave the period, or null.</summary>
    public string? WordingId => Details.WordingId;

    // Whoever asks first works it out; a second thread that did so at the same time gets what the first one kept.
    private MarkDetails Details
        => Volatile.Read(ref details) ?? Interlocked.CompareExchange(ref details, MarkDetails.Of(this, found, registers), null) ?? details!;

    /// <inheritdoc/>
    public bool Equals(Mark? other)
        => ReferenceEquals(this, other)
            || (other is not null && Kind == other.Kind && Office == other.Office && Right == other.Right && Number == other.Number && Date == other.Date
                && Start == other.Start && Group == other.Group && IsUncertain == other.IsUncertain && WordingId == other.WordingId && Text == other.Text
                && ValueList.Of(Windows).Equals(ValueList.Of(other.Windows)) && ValueList.Of(Reasons).Equals(ValueList.Of(other.Reasons))
                && ValueList.Of(Alternatives).Equals(ValueList.Of(other.Alternatives)));

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((StringComparer.Ordinal.GetHashCode(Text) * 31) + Start);

    /// <summary>Such as <c>patent-date US 1894-04-17 "PAT. APR. 17-94"</c>.</summary>
    public override string ToString()
        => string.Join(" ", new[] { KindName, Office, Right, Number, Date, "\"" + Text + "\"" }.Where(p => p is not null));
}
