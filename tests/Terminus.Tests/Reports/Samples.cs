using NodaTime;

namespace Terminus.Tests.Reports;

/// <summary>Invented pieces over an invented reference file, for words, records and pictures.</summary>
internal static class Samples
{
    internal static readonly LocalDate AsOf = new(2026, 11, 25);

    internal static readonly ReferenceSet Reference = ReferenceSet.Empty.With(ReferenceFile.Read("""
        { "format": 1, "name": "quay house", "version": "3",
          "patents": [
            { "id": "US utility 2999999", "filed": "1956-03-06", "issued": "1961-07-11", "origin": "invented", "source": "Invented." },
            { "id": "US utility 518555", "filed": "1893-06-05", "issued": "1894-04-17", "origin": "invented", "source": "Invented." } ],
          "questions": [ { "id": "cuff.closing", "text": "How does it close?", "objects": [ "cuff fastening" ], "origin": "invented" } ],
          "features": [
            { "id": "cuff.locking_bar", "name": "bar that locks crosswise", "group": "cuff fastening", "introduced": "1961", "basis": "patent",
              "grade": "high", "patents": [ "US utility 2999999" ], "origin": "invented", "source": "Invented." },
            { "id": "cuff.tumbler", "name": "tumbler back", "group": "cuff fastening", "introduced": "1930", "common": "1932", "fading": "1938",
              "gone": "1941", "basis": "trade", "grade": "high", "question": "cuff.closing", "origin": "invented", "source": "Invented." },
            { "id": "cuff.rocker", "name": "rocker back", "group": "cuff fastening", "introduced": "1948", "common": "1950", "fading": "1968",
              "basis": "patent", "grade": "high", "question": "cuff.closing", "origin": "invented", "source": "Invented." },
            { "id": "mat.ivory", "name": "ivory", "group": "material", "basis": "trade", "origin": "invented", "source": "Invented." },
            { "id": "mat.celluloid", "name": "celluloid", "group": "material", "introduced": "1870", "basis": "event", "grade": "high", "origin": "invented", "source": "Invented." } ],
          "makers": [ { "id": "ostrell", "name": "Ostrell-Vane", "from": "1946", "until": "1968", "origin": "invented", "source": "Invented." } ] }
        """).OrThrow());

    /// <summary>Pending words of a known patent: firm at its start, usual up to the issue.</summary>
    internal static PieceDating Pending { get; } = Of("""
        { "id": "QH-014", "title": "pair of cuff links, locking bar", "object": "cuff fastening",
          "marks": [ { "text": "PAT. PEND.", "part": "back", "patent": "US utility 2999999" } ],
          "features": [ { "feature": "cuff.locking_bar", "part": "back" } ] }
        """);

    /// <summary>A granted patent alone: nothing firm at its end.</summary>
    internal static PieceDating Granted { get; } = Of("""
        { "id": "QH-020", "title": "pair of cuff links", "object": "cuff fastening",
          "marks": [ { "text": "PAT. 2,999,999", "part": "back", "patent": "US utility 2999999" } ] }
        """);

    /// <summary>Two parts that exclude each other, with a part that is not original.</summary>
    internal static PieceDating Disputed { get; } = Of("""
        { "id": "QH-021", "title": "cuff links with an odd pin", "object": "cuff fastening",
          "parts": [ { "part": "box", "original": false, "why": "later" } ],
          "marks": [ { "text": "PAT. 2,999,999", "part": "box", "patent": "US utility 2999999" } ],
          "features": [ { "feature": "cuff.tumbler", "part": "left" }, { "feature": "cuff.rocker", "part": "right" } ] }
        """);

    /// <summary>Firm evidence that excludes itself.</summary>
    internal static PieceDating Contradicted { get; } = Of("""
        { "id": "QH-022", "title": "cuff links with a receipt",
          "marks": [ { "text": "PAT. 2,999,999", "patent": "US utility 2999999" } ],
          "records": [ { "date": "1935", "what": "sales receipt" } ] }
        """);

    /// <summary>Nothing known at all.</summary>
    internal static PieceDating Undated { get; } = Of("""{ "id": "QH-023" }""");

    internal static IReadOnlyList<PieceDating> All { get; } = [Pending, Granted, Disputed, Contradicted, Undated];

    internal static PieceDating Of(string json, double confidence = PieceDating.UsualConfidence)
        => PieceDating.Of(Piece.Read(json).OrThrow(), AsOf, Reference, confidence: confidence);

    /// <summary>A piece with these opinions: windows of two years with a confidence.</summary>
    internal static PieceDating Opinions(params (int From, int Until, double Confidence)[] opinions)
        => PieceDating.Of(
            new Piece("QH-030", opinions: opinions.Select(o => new PieceOpinion(
                [new PieceWindow(EdtfDate.Parse($"{o.From}"), EdtfDate.Parse($"{o.Until}"), o.Confidence)]))),
            AsOf,
            Reference);
}
