namespace Terminus;

/// <summary>Finds the questions that a piece leaves open.</summary>
internal static class OpenQuestions
{
    /// <summary>The questions that apply to the kind of object and are not answered, and the question for a patent where nothing is marked.</summary>
    internal static IEnumerable<OpenQuestion> Of(PieceDating dating)
    {
        Piece piece = dating.Piece;
        ReferenceSet reference = dating.Reference;
        foreach (QuestionEntry question in reference.Questions.Where(q => q.AppliesTo(piece.ObjectKind)))
        {
            var absent = new HashSet<string>(piece.Features.Where(f => f.Absent).Select(f => f.Feature), StringComparer.Ordinal);
            FeatureEntry[] answers = [.. reference.Answers(question.Id).Where(a => !absent.Contains(a.Id))];
            foreach (string? part in OpenParts(piece, question, reference))
            {
                var open = new FeatureQuestion(question, part, answers, reference, dating.Dating.Assumptions);
                if (open.IsDated)
                {
                    yield return open;
                }
            }
        }

        if (piece.Marks.Count == 0)
        {
            yield return new PatentQuestion(dating.Dating.AsOfDay);
        }
    }

    // A question with no answer is put to its own part. One that is answered for some members of a lot is put to the members nothing is known of.
    private static IEnumerable<string?> OpenParts(Piece piece, QuestionEntry question, ReferenceSet reference)
    {
        List<string?> answered = [.. piece.Features.Where(f => !f.Absent && reference.Feature(f.Feature)?.Question == question.Id).Select(f => f.Part)];
        if (answered.Count == 0)
        {
            return piece.Parts.Any(p => !p.Original && string.Equals(p.Part, question.Part, StringComparison.Ordinal)) ? [] : [question.Part];
        }

        return answered.Contains(null)
            ? []
            : piece.Parts.Where(p => p.Original && !Mentions(piece, p.Part)).Select(p => p.Part);
    }

    private static bool Mentions(Piece piece, string part)
        => piece.Marks.Any(m => m.Part == part)
            || piece.Features.Any(f => f.Part == part)
            || piece.Subjects.Any(s => s.Part == part)
            || piece.Inscriptions.Any(i => i.Part == part)
            || piece.Records.Any(r => r.Part == part)
            || piece.Makers.Any(m => m.Part == part)
            || piece.Adverts.Any(a => a.Part == part)
            || piece.Opinions.Any(o => o.Part == part);
}
