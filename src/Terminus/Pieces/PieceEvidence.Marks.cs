namespace Terminus;

/// <content>Marks: what a mark that names its patent says, what its text says, and which marks of the reference file it holds.</content>
internal sealed partial class PieceEvidence
{
    private void AddMark(PieceMark mark, EntryPath path)
    {
        PatentEntry? named = Named(mark, path);
        bool isTooLong = mark.Text is { Length: > Inscription.LongestText };
        if (isTooLong)
        {
            Report($"The mark has {mark.Text!.Length} characters, and at most {Inscription.LongestText} are read.", path + ".text");
        }

        StampEvidence? stamp = mark.Text is null || isTooLong ? null : kept.Stamp(mark.Text, mark.Part, reference);
        if (named is not null)
        {
            AddPatent(named, mark.Part, stamp is { IsPending: true }, path);
        }

        if (stamp is null)
        {
            return;
        }

        // The patent that the mark names stands for what its text says of patents.
        foreach (Evidence item in stamp.Items.Span)
        {
            if (named is null || item is not (PatentIssued or PatentPending))
            {
                items.Add(item);
            }
        }

        foreach (Evidence known in stamp.Known.Span)
        {
            items.Add(known);
        }

        if (named is null && stamp.IsUnread)
        {
            Report($"Nothing could be read in the mark \"{mark.Text}\".", path + ".text");
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

    private void AddPatent(PatentEntry patent, string? part, bool pending, EntryPath path)
    {
        if (pending || patent.Issued is not null)
        {
            items.Add(kept.Patent(patent, part, pending));
        }
        else
        {
            Report($"The patent \"{patent.Id}\" has no issue date in the reference file.", path + ".patent");
        }
    }
}
