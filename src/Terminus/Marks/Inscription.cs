namespace Terminus;

/// <summary>What is stamped or printed on a thing, read into marks and an unread rest.</summary>
/// <remarks>
/// Every character of the text belongs to one mark or to the rest, in order. Reading never throws, is linear in the length of the text,
/// and the same text always gives the same answer. Windows, reasons and other readings of a mark are worked out when they are first asked for,
/// which is safe on any thread. Two inscriptions are equal when their texts and readings are.
/// </remarks>
public sealed record Inscription
{
    /// <summary>The most characters of an inscription that is read. A longer text has no marks and is unread as a whole.</summary>
    public const int LongestText = 4096;

    private readonly ValueList<Mark> marks;
    private ValueList<TextPart>? unread;

    private Inscription(string text, Mark[] marks)
    {
        Text = text;
        this.marks = ValueList<Mark>.Owning(marks);
    }

    /// <summary>The text as typed, with <c>/</c> or a line break where a line ends and <c>?</c> or square brackets for what is lost.</summary>
    public string Text { get; }

    /// <summary>The marks in the order of the text.</summary>
    public IReadOnlyList<Mark> Marks => marks;

    /// <summary>What no mark claims, in the order of the text, with the spaces and signs between the marks.</summary>
    public IReadOnlyList<TextPart> Unread => unread ??= ValueList.Of(Rest());

    /// <summary>Reads what is stamped.</summary>
    /// <param name="text">The text as typed, any text at all; one longer than <see cref="LongestText"/> is not read.</param>
    /// <param name="registers">The registers that turn numbers into windows, or null for <see cref="RegisterSet.BuiltIn"/>.</param>
    public static Inscription Read(string text, RegisterSet? registers = null) => Read(text, registers, out _);

    /// <summary>Reads what is stamped, and counts how often a character was looked at.</summary>
    internal static Inscription Read(string text, RegisterSet? registers, out int visits)
    {
        Guard.NotNull(text, nameof(text));
        visits = 0;
        return new Inscription(text, text.Length > LongestText ? [] : InscriptionReader.Read(text, registers ?? RegisterSet.BuiltIn, out visits));
    }

    /// <inheritdoc/>
    public bool Equals(Inscription? other)
        => ReferenceEquals(this, other) || (other is not null && string.Equals(Text, other.Text, StringComparison.Ordinal) && marks.Equals(other.marks));

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    /// <summary>
    /// The marks as items of evidence, one for each observation: a number and a date of one stamp that agree are one item, and what says
    /// nothing of a date gives none.
    /// </summary>
    /// <param name="part">The part that bears the inscription ("back", "pin"), or null for the whole piece.</param>
    /// <param name="source">Where the inscription was read, or null; wordings then name the source of their period.</param>
    public IReadOnlyList<Evidence> ToEvidence(string? part = null, string? source = null) => MarkEvidence.Of(this, part, source);

    private IEnumerable<TextPart> Rest()
    {
        int position = 0;
        foreach (Mark mark in marks)
        {
            if (mark.Start > position)
            {
                yield return new TextPart(position, Text.Substring(position, mark.Start - position));
            }

            position = mark.Start + mark.Length;
        }

        if (position < Text.Length)
        {
            yield return new TextPart(position, Text.Substring(position));
        }
    }
}
