namespace Terminus;

/// <content>Marks: what a mark that names its patent says, what its text says, and which marks of the reference file it holds.</content>
internal sealed partial class PieceEvidence
{
    private void AddMark(PieceMark mark, EntryPath path)
    {
        PatentEntry? named = Named(mark, path);
        Inscription? inscription = mark.Text is null ? null : Inscription.Read(mark.Text, registers);
        bool pending = inscription?.Marks.Any(m => m.Kind is MarkKind.Pending or MarkKind.DesignPending) ?? false;
        if (named is not null)
        {
            AddPatent(named, mark.Part, pending, path);
        }

        if (inscription is null)
        {
            return;
        }

        foreach (Evidence item in MarkEvidence.Of(inscription, mark.Part, null))
        {
            AddFromText(item, named);
        }

        AddKnownMarks(inscription.Text, mark.Part);
        if (named is null && inscription.Marks.Count == 0 && LooksWorn(inscription.Text))
        {
            problems.Add(new DocumentProblem($"Nothing could be read in the mark \"{inscription.Text}\".", path + ".text"));
        }
    }

    private PatentEntry? Named(PieceMark mark, EntryPath path)
    {
        if (mark.Patent is null)
        {
            return null;
        }

        PatentEntry? named = reference.Patent(mark.Patent);
        if (named is null)
        {
            Unknown("patent", mark.Patent, path + ".patent", []);
        }

        return named;
    }

    // A mark that names its patent speaks of filing and issue; which of the two depends on whether it says "pending".
    private void AddPatent(PatentEntry patent, string? part, bool pending, EntryPath path)
    {
        EvidenceDate? issued = ToDate(patent.Issued);
        if (pending)
        {
            items.Add(new PatentPending(
                ToDate(patent.Filed), issued, patent.Office, patent.Right, patent.Number, part, patent.Source, [patent.Id]));
        }
        else if (issued is not null)
        {
            items.Add(new PatentIssued(
                issued, patent.Office, patent.Right, patent.Number, part: part, source: patent.Source, entries: [patent.Id]));
        }
        else
        {
            problems.Add(new DocumentProblem($"The patent \"{patent.Id}\" has no issue date in the reference file.", path + ".patent"));
        }
    }

    // The patent that the mark names stands for what its text says of patents; a patent of the reference file beats the register.
    private void AddFromText(Evidence item, PatentEntry? named)
    {
        if (named is not null && item is PatentIssued or PatentPending)
        {
            return;
        }

        string? id = item switch
        {
            PatentIssued e => IdOf(e.Office, e.Right, e.Number),
            RightRegistered e => IdOf(e.Office, e.Right, e.Number),
            _ => null,
        };
        items.Add(reference.Patent(id) is { Issued: not null } known ? FromEntry(item, known) : item);
    }

    private static Evidence FromEntry(Evidence item, PatentEntry known)
    {
        var reasons = new List<Reason> { new("pieces.reference-beats-register", "patent", known.Id) };
        EvidenceDate issued = EvidenceDate.From(known.Issued!);
        return item is PatentIssued
            ? new PatentIssued(issued, known.Office, known.Right, known.Number, part: item.Part, source: known.Source, entries: [known.Id], reasons: reasons)
            : new RightRegistered(issued, known.Office, known.Right, known.Number, part: item.Part, source: known.Source, entries: [known.Id], reasons: reasons);
    }

    private static string? IdOf(string? office, string? right, string? number)
        => office is null || right is null || number is null ? null : office + " " + right + " " + number;

    // Marks of the user's own reference file are found by their words, whatever the case and the spacing.
    private void AddKnownMarks(string text, string? part)
    {
        if (reference.Marks.Count == 0)
        {
            return;
        }

        string words = AsWords(text);
        foreach (MarkEntry known in reference.Marks)
        {
            if (words.AsSpan().IndexOf(AsWords(known.Text).AsSpan(), StringComparison.OrdinalIgnoreCase) >= 0)
            {
                items.Add(new MarkInUse(known.Id, ToDate(known.From), ToDate(known.Until), known.ByLaw, known.Ended, part, known.Source, [known.Id]));
            }
        }
    }

    private static string AsWords(string text)
        => " " + string.Join(" ", text.Split([' ', '\t', '\n', '\r', '/', '.', ',', '-'], StringSplitOptions.RemoveEmptyEntries)) + " ";

    private static bool LooksWorn(string text) => text.Any(c => c is >= '0' and <= '9' or '?' or '[');
}
