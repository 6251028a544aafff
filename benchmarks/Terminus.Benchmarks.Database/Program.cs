using System.Globalization;
using Terminus.Benchmarks.Database;
using Terminus.Benchmarks.Figures;

// The plain window of many pieces by a database and by the library, on the same rows; prints figures, or stops where the answers differ.
int pieces = int.Parse(args[0], CultureInfo.InvariantCulture);
var windows = new FirmWindows(pieces);
using var table = new WindowTable(windows);
table.Intersect(2);
if (!table.Answers(pieces).SequenceEqual(windows.Intersect()) || !windows.Intersect().SequenceEqual(windows.Possible))
{
    throw new InvalidOperationException("The database, the windows and the datings do not agree.");
}

string of = pieces + " pieces";
Console.WriteLine(new Figure("windows in the table", of, windows.Rows.Count, ""));
Console.WriteLine(new Figure("contradictory pieces", of, windows.Possible.Count(p => p is null), ""));
Console.WriteLine(new Figure("database " + table.Version, of, 1, "version"));
IEnumerable<Figure> figures = new Passes(7)
    .Add("library on one thread", () => windows.Intersect())
    .Add("database on one thread", () => table.Intersect(1))
    .Add("database on two threads", () => table.Intersect(2))
    .Measure(of);
foreach (Figure figure in figures)
{
    Console.WriteLine(figure);
}
