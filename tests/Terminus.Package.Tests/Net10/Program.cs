using NodaTime;
using Terminus;

// An invented piece: a patent's date on the back, and the receipt of the shop that sold it new.
const string piece = """
    { "id": "P-1",
      "marks":   [ { "text": "PAT. JULY 11, 1961", "part": "back" } ],
      "records": [ { "date": "1963", "what": "sales receipt", "new": true } ] }
    """;

PieceDating dating = PieceDating.Of(Piece.Read(piece).OrThrow(), asOf: new LocalDate(2026, 11, 25));
Console.WriteLine(dating.Interval?.ToEdtf());
Console.WriteLine(RegisterSet.BuiltIn.Read("US", "utility", "2,966,681").Outer.NotBefore?.Year);
