using NodaTime;

namespace Terminus.Fuzz.Targets;

/// <summary>What pieces are dated with: the built-in reference and, above it, an invented entry of each kind.</summary>
internal static class FuzzReference
{
    /// <summary>The day of the opinion.</summary>
    internal static LocalDate AsOf { get; } = new(2026, 11, 25);

    private static readonly ReferenceFile File = ReferenceFile.Read(
        """
        { "name": "invented", "version": "1",
          "features":  [ { "id": "f1", "name": "invented catch", "basis": "patent", "introduced": "1931", "common": "1934", "fading": "1950", "gone": "1961", "question": "q1", "patents": [ "US utility 2999999" ], "source": "invented", "origin": "invented" },
                         { "id": "f2", "name": "invented pin", "basis": "trade", "gone": "1940~", "question": "q1", "source": "invented", "origin": "invented" } ],
          "questions": [ { "id": "q1", "text": "How does it close?", "source": "invented", "origin": "invented" } ],
          "patents":   [ { "id": "US utility 2999999", "filed": "1956-03-06", "issued": "1961-09-12", "source": "invented", "origin": "invented" } ],
          "makers":    [ { "id": "m1", "name": "Larkfield & Daughters", "from": "1921", "until": "1958", "forms": [ { "name": "L. & D.", "from": "1930" } ], "source": "invented", "origin": "invented" } ],
          "adverts":   [ { "id": "a1", "date": "1955-11", "model": "Heron", "source": "invented", "origin": "invented" } ],
          "marks":     [ { "id": "k1", "text": "HERON", "from": "1933", "until": "1949", "maker": "m1", "source": "invented", "origin": "invented" } ] }
        """).OrThrow();

    /// <summary>The reference.</summary>
    internal static ReferenceSet Set { get; } = ReferenceSet.BuiltIn.With(File);

    /// <summary>The invented entries alone, with few questions to ask.</summary>
    internal static ReferenceSet Invented { get; } = ReferenceSet.Empty.With(File);
}
