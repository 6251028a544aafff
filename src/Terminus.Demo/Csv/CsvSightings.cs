using nietras.SeparatedValues;

namespace Terminus.Demo.Csv;

/// <summary>Reads sightings from CSV with a header: <c>date</c> and <c>source</c>, and <c>feature</c> where there is more than one.</summary>
internal static class CsvSightings
{
    internal static List<Sighting> Read(TextReader text, string? file, Action<DocumentProblem> report)
    {
        var sightings = new List<Sighting>();
        try
        {
            using SepReader rows = Sep.Reader(o => o with { Unescape = true, DisableColCountCheck = true }).From(text);
            int date = Column(rows, "date");
            int source = Column(rows, "source");
            int feature = Column(rows, "feature");
            if (date < 0 || source < 0)
            {
                report(new DocumentProblem("The header has the columns date and source, and may have feature.", "header", file));
                return sightings;
            }

            while (rows.MoveNext())
            {
                SepReader.Row row = rows.Current;
                if (!CsvQuotes.AreSound(row.Span, rows.Spec.Sep.Separator))
                {
                    report(CsvQuotes.Problem(row, file));
                    continue;
                }

                string Cell(int column, SepReader.Row of) => column >= 0 && column < of.ColCount ? of[column].ToString().Trim() : "";
                string written = Cell(date, row);
                if (EdtfDate.TryParse(written, out EdtfDate? read, out EdtfError? error) && read.Window is { } window)
                {
                    sightings.Add(new Sighting(window, Cell(source, row), Cell(feature, row)));
                }
                else if (row.ColCount > 1 || written.Length > 0)
                {
                    report(new DocumentProblem(
                        $"\"{written}\" is no date that can be used: {error?.Reason ?? "it lies outside the calendar."}", "date", file, row.LineNumberFrom));
                }
            }
        }
        catch (Exception wrong) when (wrong is ArgumentException or InvalidDataException or NotSupportedException or InvalidOperationException or KeyNotFoundException)
        {
            report(new DocumentProblem("The sightings cannot be read as CSV: " + wrong.Message, "$", file));
        }

        return sightings;
    }

    private static int Column(SepReader rows, string name)
    {
        IReadOnlyList<string> names = rows.Header.ColNames;
        for (int i = 0; i < names.Count; i++)
        {
            if (string.Equals(names[i].Trim(), name, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return -1;
    }
}
