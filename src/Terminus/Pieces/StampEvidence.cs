namespace Terminus;

/// <summary>What the text of a mark says: its items of evidence, and what a person would want to know of the reading.</summary>
internal sealed class StampEvidence
{
    private StampEvidence(ValueList<Evidence> items, ValueList<Evidence> known, bool isPending, bool isUnread)
        => (Items, Known, IsPending, IsUnread) = (items, known, isPending, isUnread);

    /// <summary>What the marks say that were read.</summary>
    internal ValueList<Evidence> Items { get; }

    /// <summary>The marks of the reference file that the text holds.</summary>
    internal ValueList<Evidence> Known { get; }

    /// <summary>Whether the text says that a right was applied for.</summary>
    internal bool IsPending { get; }

    /// <summary>Whether nothing was read although there are digits or lost letters.</summary>
    internal bool IsUnread { get; }

    /// <summary>Reads a text. A patent of the reference file beats the register.</summary>
    internal static StampEvidence Of(string text, string? part, ReferenceSet reference)
    {
        Inscription inscription = Inscription.Read(text, RegisterSet.BuiltIn);
        IReadOnlyList<Evidence> read = MarkEvidence.Of(inscription, part, null);
        var items = new Evidence[read.Count];
        for (int i = 0; i < items.Length; i++)
        {
            items[i] = OfReference(read[i], reference);
        }

        return new StampEvidence(
            ValueList<Evidence>.Owning(items),
            Holding(text, part, reference),
            inscription.Marks.Any(m => m.Kind is MarkKind.Pending or MarkKind.DesignPending),
            inscription.Marks.Count == 0 && text.Any(c => c is >= '0' and <= '9' or '?' or '['));
    }

    private static Evidence OfReference(Evidence item, ReferenceSet reference)
        => item is PatentIssued or RightRegistered && item is RightEvidence { Office: { } office, Right: { } right, Number: { } number }
            && reference.Patent(office + " " + right + " " + number) is { Issued: not null } known
            ? FromEntry(item, known)
            : item;

    private static Evidence FromEntry(Evidence item, PatentEntry known)
    {
        var reasons = new List<Reason> { new("pieces.reference-beats-register", "patent", known.Id) };
        EvidenceDate issued = EvidenceDate.From(known.Issued!);
        return item is PatentIssued
            ? new PatentIssued(issued, known.Office, known.Right, known.Number, part: item.Part, source: known.Source, entries: [known.Id], reasons: reasons)
            : new RightRegistered(issued, known.Office, known.Right, known.Number, part: item.Part, source: known.Source, entries: [known.Id], reasons: reasons);
    }

    // Marks of the user's own reference file are found by their words, whatever the case and the spacing.
    private static ValueList<Evidence> Holding(string text, string? part, ReferenceSet reference)
    {
        if (reference.Marks.Count == 0)
        {
            return ValueList<Evidence>.Empty;
        }

        string words = AsWords(text);
        return ValueList.Of<Evidence>(reference.Marks
            .Where(known => words.AsSpan().IndexOf(AsWords(known.Text).AsSpan(), StringComparison.OrdinalIgnoreCase) >= 0)
            .Select(known => EntryEvidence.OfMark(known, part)));
    }

    private static string AsWords(string text)
        => " " + string.Join(" ", text.Split([' ', '\t', '\n', '\r', '/', '.', ',', '-'], StringSplitOptions.RemoveEmptyEntries)) + " ";
}
