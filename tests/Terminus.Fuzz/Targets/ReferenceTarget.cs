namespace Terminus.Fuzz.Targets;

/// <summary>What becomes of a reference document: the file, what the check finds in it, and a piece that has every one of its features, marks and makers.</summary>
internal sealed record ReferenceAnswer(DocumentResult<ReferenceFile> Read, IReadOnlyList<ReferenceFinding> Findings, PieceDating? Dating, string? Result);

/// <summary>Reference documents: what is read is written and reads back equal, is checked, and dates pieces.</summary>
internal sealed class ReferenceTarget() : FuzzTarget<ReferenceAnswer>(new AllocationLimits(4 * 1024 * 1024, 16 * 1024))
{
    private const int MostOfAKind = 8;

    protected override ReferenceAnswer Answer(byte[] input)
    {
        DocumentResult<ReferenceFile> read = ReferenceFile.Read(input, "reference.json");
        if (read.Value is not { } file)
        {
            return new ReferenceAnswer(read, [], null, null);
        }

        IReadOnlyList<ReferenceFinding> findings = ReferenceCheck.Run(file, FuzzReference.Set);
        PieceDating dating = PieceDating.Of(PieceOf(file), FuzzReference.AsOf, FuzzReference.Set.With(file));
        return new ReferenceAnswer(read, findings, dating, ResultDocument.ToJson(dating));
    }

    protected override bool AreSame(ReferenceAnswer first, ReferenceAnswer second)
        => first.Result == second.Result && Equals(first.Read.Value, second.Read.Value)
            && first.Read.Problems.SequenceEqual(second.Read.Problems) && first.Findings.SequenceEqual(second.Findings);

    protected override void Judge(ReferenceAnswer answer)
    {
        Demand.That(answer.Read.Value is not null || answer.Read.Problems.Count > 0, "A document without a file says why.");
        if (answer.Read.Value is { } file)
        {
            DocumentResult<ReferenceFile> again = ReferenceFile.Read(file.ToJson());
            Demand.That(again.Value == file && (again.IsSound || !answer.Read.IsSound), "A written reference file reads back equal.");
            Demand.Worded(answer.Findings.Select(f => f.Reason));
            Demand.Json(answer.Result!);
            Lawful.Piece(answer.Dating!);
        }
    }

    private static Piece PieceOf(ReferenceFile file) => new(
        "A",
        marks: [.. file.Marks.Take(MostOfAKind).Select(m => new PieceMark(m.Text)), .. file.Patents.Take(MostOfAKind).Select(p => new PieceMark("PAT.", null, p.Id))],
        features: file.Features.Take(MostOfAKind).Select(f => new PieceFeature(f.Id)),
        subjects: file.Features.Skip(MostOfAKind).Take(MostOfAKind).Select(f => new PieceSubject(f.Id)),
        makers: file.Makers.Take(MostOfAKind).Select(m => new PieceMaker(m.Id, m.Forms.Count > 0 ? m.Forms[0].Text : null)),
        adverts: file.Adverts.Take(MostOfAKind).Where(a => a.Date is { Window: not null }).Select(a => new PieceAdvert(a.Date!, a.What, a.Model)));
}
