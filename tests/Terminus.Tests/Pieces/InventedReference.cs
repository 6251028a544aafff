namespace Terminus.Tests.Pieces;

/// <summary>A small invented reference file, so that what is tested does not move with the shipped one.</summary>
internal static class InventedReference
{
    internal const string Json = """
        {
          "name": "invented", "version": "1.0.0",
          "questions": [ { "id": "q.catch", "text": "Which catch?" } ],
          "features": [
            { "id": "t.hook", "name": "open hook", "common": "1880", "fading": "1910", "basis": "trade", "grade": "high", "question": "q.catch", "origin": "invented", "source": "Invented." },
            { "id": "t.catch", "name": "rolling catch", "introduced": "1936", "basis": "patent", "grade": "high", "question": "q.catch", "patents": ["US utility 2040000"], "origin": "invented", "source": "Invented." },
            { "id": "t.snap", "name": "snap", "introduced": "191X", "common": "192X", "fading": "193X", "gone": "1941~", "basis": "trade", "grade": "high", "origin": "invented", "source": "Invented." },
            { "id": "t.until1954", "name": "tulip", "fading": "1954", "basis": "trade", "grade": "high", "origin": "invented", "source": "Invented." },
            { "id": "t.from1955", "name": "daisy", "introduced": "1955", "basis": "patent", "grade": "high", "origin": "invented", "source": "Invented." },
            { "id": "t.undated", "name": "plain pin", "basis": "trade", "grade": "low", "origin": "invented", "source": "Invented." },
            { "id": "sub.kite", "name": "a kite ship", "introduced": "1936-05-12", "basis": "event", "grade": "high", "origin": "invented", "source": "Invented." }
          ],
          "patents": [
            { "id": "US utility 2999999", "filed": "1956-03-06", "issued": "1961-07-11", "origin": "invented", "source": "Invented." },
            { "id": "US utility 2040000", "filed": "1934-02-06", "issued": "1936-05-05", "origin": "invented", "source": "Invented." },
            { "id": "US utility 1480977", "filed": "1922-05-02", "issued": "1924-01-15", "origin": "invented", "source": "Invented." }
          ],
          "makers": [ { "id": "t.maker", "name": "Tarn & Oake", "from": "1919", "until": "1964", "forms": [ { "name": "OLD NAME", "from": "1919", "until": "1946" } ], "origin": "invented", "source": "Invented." } ],
          "adverts": [ { "id": "t.advert", "date": "1951", "model": "Model A", "what": "a trade list, p. 9", "origin": "invented", "source": "Invented." } ]
        }
        """;

    internal static readonly NodaTime.LocalDate Today = new(2026, 11, 25);

    internal static ReferenceSet Set { get; } = ReferenceSet.Empty.With(ReferenceFile.Read(Json).OrThrow());

    /// <summary>Dates a piece document under the invented reference file.</summary>
    internal static PieceDating Date(string json) => PieceDating.Of(Piece.Read(json), Today, Set)!;
}
