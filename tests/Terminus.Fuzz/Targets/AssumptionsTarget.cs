namespace Terminus.Fuzz.Targets;

/// <summary>Files of house defaults: any of them dates a piece that has evidence of every kind.</summary>
internal sealed class AssumptionsTarget() : FuzzTarget<(DocumentResult<Assumptions> Read, PieceDating? Dating, string? Result)>(new AllocationLimits(1024 * 1024, 4 * 1024))
{
    private static readonly Piece Everything = Piece.Read(
        """
        { "id": "A", "stated": "1955~",
          "marks": [ { "text": "PAT. PEND." }, { "text": "PAT. 2,999,999", "patent": "US utility 2999999" }, { "text": "PAT. NOV. 10, 1885", "part": "back" }, { "text": "MADE IN OCCUPIED JAPAN" } ],
          "features": [ { "feature": "f1" }, { "feature": "f2", "part": "pin" } ], "subjects": [ { "subject": "sub.jet" } ],
          "inscriptions": [ { "date": "1962-06-14", "of": "presentation" }, { "date": "1899?", "of": "since" }, { "date": "1960~", "of": "commemorative" } ],
          "records": [ { "date": "1963", "new": true } ], "makers": [ { "maker": "m1" } ], "adverts": [ { "date": "1955-11", "model": "Heron" } ],
          "opinions": [ { "windows": [ { "notBefore": "1950", "notAfter": "1970", "confidence": 0.7 } ] } ] }
        """).OrThrow();

    protected override (DocumentResult<Assumptions> Read, PieceDating? Dating, string? Result) Answer(byte[] input)
    {
        DocumentResult<Assumptions> read = Assumptions.Read(input, "house.json");
        PieceDating? dating = read.Value is { } assumptions ? PieceDating.Of(Everything, FuzzReference.AsOf, FuzzReference.Set, assumptions) : null;
        return (read, dating, dating is null ? null : ResultDocument.ToJson(dating));
    }

    protected override bool AreSame((DocumentResult<Assumptions> Read, PieceDating? Dating, string? Result) first, (DocumentResult<Assumptions> Read, PieceDating? Dating, string? Result) second)
        => first.Result == second.Result && Equals(first.Read.Value, second.Read.Value) && first.Read.Problems.SequenceEqual(second.Read.Problems);

    protected override void Judge((DocumentResult<Assumptions> Read, PieceDating? Dating, string? Result) answer)
    {
        Demand.That(answer.Read.Value is not null || answer.Read.Problems.Count > 0, "A document without defaults says why.");
        if (answer.Dating is { } dating)
        {
            Demand.Json(answer.Result!);
            Lawful.Piece(dating);
        }
    }
}
