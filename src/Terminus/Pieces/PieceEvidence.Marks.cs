namespace Terminus;

/// <content>Marks: what a mark that names its patent says, and what its text says.</content>
internal sealed partial class PieceEvidence
{
    private void AddMark(PieceMark mark, string path)
    {
        if (mark.Patent is null)
        {
            return;
        }

        if (reference.Patent(mark.Patent) is not { } patent)
        {
            Unknown("patent", mark.Patent, path + ".patent", reference.Patents.Select(p => p.Id));
            return;
        }

        AddPatent(patent, mark, IsPending(mark.Text), path);
    }

    // A mark that names its patent speaks of filing and issue; which of the two depends on whether it says "pending".
    private void AddPatent(PatentEntry patent, PieceMark mark, bool pending, string path)
    {
        EvidenceDate? issued = ToDate(patent.Issued);
        if (pending)
        {
            items.Add(new PatentPending(
                ToDate(patent.Filed), issued, patent.Office, patent.Right, patent.Number, mark.Part, patent.Source, [patent.Id]));
        }
        else if (issued is not null)
        {
            items.Add(new PatentIssued(
                issued, patent.Office, patent.Right, patent.Number, part: mark.Part, source: patent.Source, entries: [patent.Id]));
        }
        else
        {
            problems.Add(new DocumentProblem($"The patent \"{patent.Id}\" has no issue date in the reference file.", path + ".patent"));
        }
    }

    private static bool IsPending(string? text) => text is not null && text.AsSpan().IndexOf("PEND".AsSpan(), StringComparison.OrdinalIgnoreCase) >= 0;
}
