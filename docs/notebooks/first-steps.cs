#:package Terminus@0.1.0
using NodaTime;
using Terminus;

// %% [markdown]
// # First steps
//
// What a mark says, what a piece says, and what each item of evidence does to the answer. The piece is invented.

// %%
Inscription inscription = Inscription.Read("PAT. JULY 11, 1961");
foreach (Mark mark in inscription.Marks)
{
    Console.WriteLine($"{mark.KindName}: {mark.Date}");
}
// show inscription

// %% [markdown]
// A piece is described as JSON, or built with constructors. The day of the opinion is always said: nothing is made after it.

// %%
Piece piece = Piece.Read("""
    { "id": "P-1", "title": "pair of cuff links, swivel bar",
      "marks":   [ { "text": "PAT. JULY 11, 1961", "part": "back" } ],
      "records": [ { "date": "1963", "what": "sales receipt", "new": true } ] }
    """).OrThrow();
PieceDating dating = PieceDating.Of(piece, asOf: new LocalDate(2026, 11, 25));
Console.WriteLine(dating.Interval?.ToEdtf());
// show dating

// %% [markdown]
// The patent gives the start, since nothing bears a patent's issue date before that day. The receipt gives the end. Take either away, and its
// end of the interval goes.

// %%
for (int item = 0; item < dating.Dating.Evidence.Count; item++)
{
    Influence influence = dating.Dating.InfluenceOf(item, confidence: 0.9);
    Console.WriteLine($"without {dating.Dating.Evidence[item].Kind}: {influence.IntervalWithout?.ToEdtf()}");
}
