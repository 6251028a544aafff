namespace Terminus.Fuzz.Targets;

/// <summary>What becomes of a piece document.</summary>
internal sealed record PieceAnswer(DocumentResult<Piece> Read, PieceDating? Dating, string? Result);

/// <summary>Piece documents: what is read is written and reads back equal, and its dating keeps the laws.</summary>
internal sealed class PieceTarget() : FuzzTarget<PieceAnswer>(new AllocationLimits(2 * 1024 * 1024, 4 * 1024))
{
    protected override PieceAnswer Answer(byte[] input)
    {
        DocumentResult<Piece> read = Piece.Read(input, "piece.json");
        PieceDating? dating = PieceDating.Of(read, FuzzReference.AsOf, FuzzReference.Set);
        return new PieceAnswer(read, dating, dating is null ? null : ResultDocument.ToJson(dating, steps: true));
    }

    protected override bool AreSame(PieceAnswer first, PieceAnswer second)
        => first.Result == second.Result && Equals(first.Read.Value, second.Read.Value) && first.Read.Problems.SequenceEqual(second.Read.Problems);

    protected override void Judge(PieceAnswer answer)
    {
        Demand.That(answer.Read.Value is not null || answer.Read.Problems.Count > 0, "A document without a piece says why.");
        if (answer.Read.Value is { } piece)
        {
            DocumentResult<Piece> again = Piece.Read(piece.ToJson());
            Demand.That(again.IsSound && again.Value == piece, "A written piece reads back equal.");
            Demand.Json(answer.Result!);
            Lawful.Piece(answer.Dating!);
        }
    }
}
