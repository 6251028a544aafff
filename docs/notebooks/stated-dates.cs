#:package Terminus@0.1.0
using NodaTime;
using Terminus;

// %% [markdown]
// # Checking a collection's stated dates against its marks
//
// A list of invented pieces, each with the date that its label states. The evidence on the pieces agrees with the label, says that the label is
// narrower than what is known, or contradicts it.

// %%
string collection = """
    [ { "id": "P-1", "title": "cuff links, swivel bar", "stated": "1955",
        "marks": [ { "text": "PAT. JULY 11, 1961", "part": "back" } ] },
      { "id": "P-2", "title": "cuff links, swivel bar", "stated": "1961/1963",
        "marks": [ { "text": "PAT. JULY 11, 1961", "part": "back" } ],
        "records": [ { "date": "1963", "what": "sales receipt", "new": true } ] },
      { "id": "P-3", "title": "brooch with a presentation date", "stated": "1930",
        "inscriptions": [ { "date": "1924-06-14", "text": "from the quarry band", "of": "presentation" } ] } ]
    """;
var asOf = new LocalDate(2026, 11, 25);
List<PieceDating> datings = [.. Piece.ReadAll(System.Text.Encoding.UTF8.GetBytes(collection)).Select(read => PieceDating.Of(read, asOf)).OfType<PieceDating>()];
// show datings

// %%
foreach (PieceDating dating in datings)
{
    Console.WriteLine($"{dating.Piece.Id} stated {dating.Piece.Stated}: {dating.Stated?.Verdict}");
}

// %% [markdown]
// Where a label is contradicted, one item of evidence weighs most against it.

// %%
foreach (PieceDating dating in datings.Where(d => d.Stated is { Verdict: ClaimVerdict.Contradicted, By: not null }))
{
    Console.WriteLine($"{dating.Piece.Id}: {dating.Dating.Evidence[dating.Stated!.By!.Value].Kind}");
}
