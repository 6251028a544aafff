using Catalogue;

Console.WriteLine(Answers.Interval("""
    { "id": "P-1", "marks": [ { "text": "PAT. JULY 11, 1961" } ], "records": [ { "date": "1963", "what": "sales receipt", "new": true } ] }
    """));
Console.WriteLine(Answers.Year("2,966,681"));
