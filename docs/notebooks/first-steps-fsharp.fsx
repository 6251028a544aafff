#r "nuget: Terminus, 0.1.0"
open NodaTime
open Terminus

// %% [markdown]
// # First steps, in F#
//
// The same invented piece as in the first steps, built with constructors.

// %%
let piece =
    Piece(
        "P-1",
        "pair of cuff links, swivel bar",
        marks = [ PieceMark("PAT. JULY 11, 1961", part = "back") ],
        records = [ PieceRecord(EdtfDate.Parse "1963", "sales receipt", boughtNew = true) ]
    )

let dating = PieceDating.Of(piece, LocalDate(2026, 11, 25))
printfn "%s" (dating.Interval.ToEdtf())
// show HTML(NotebookHtml.Of dating)

// %% [markdown]
// A sealed family of evidence is matched like a union.

// %%
for item in dating.Dating.Evidence do
    match item with
    | :? PatentIssued as patent -> printfn "a patent of %O" patent.Issued
    | :? KnownBy as record -> printfn "a record of %O" record.Date
    | other -> printfn "%s" other.Kind
