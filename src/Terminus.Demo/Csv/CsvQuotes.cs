using nietras.SeparatedValues;

namespace Terminus.Demo.Csv;

/// <summary>
/// Whether the quotation marks of a row of CSV are where they can be. One that opens a cell and is not closed joins the lines that follow into one
/// cell, which would lose them without a word.
/// </summary>
/// <remarks>
/// By RFC 4180 a cell is quoted as a whole, and a quotation mark in it is doubled. A cell that is not quoted may hold quotation marks here, as
/// long as no separator or line break stands between two of them.
/// </remarks>
internal static class CsvQuotes
{
    private const char Quote = '"';

    internal static bool AreSound(ReadOnlySpan<char> row, char separator)
    {
        if (!row.Contains(Quote))
        {
            return true;
        }

        bool startsCell = true;
        while (row.Length > 0)
        {
            if (row[0] != Quote)
            {
                startsCell = row[0] == separator;
                row = row[1..];
                continue;
            }

            int inside = startsCell ? QuotedLength(row[1..]) : row[1..].IndexOf(Quote);
            if (inside < 0)
            {
                return false;
            }

            ReadOnlySpan<char> between = row.Slice(1, inside);
            row = row[(inside + 2)..];
            if (startsCell ? row.Length > 0 && row[0] != separator : between.Contains(separator) || between.ContainsAny('\r', '\n'))
            {
                return false;
            }

            startsCell = false;
        }

        return true;
    }

    /// <summary>What is wrong with a row whose quotation marks are not sound, with its first line.</summary>
    internal static DocumentProblem Problem(SepReader.Row row, string? file = null) => new(
        "A quotation mark is not closed at the end of its cell, or stands in a cell that is not quoted"
            + (row.LineNumberToExcl - row.LineNumberFrom > 1 ? FormattableString.Invariant($", so the lines to {row.LineNumberToExcl - 1} are one row") : "")
            + "; it is refused. In a quoted cell a quotation mark is written twice.",
        "row",
        file,
        row.LineNumberFrom);

    // How far it is to the mark that closes a quoted cell; -1 where none does.
    private static int QuotedLength(ReadOnlySpan<char> cell)
    {
        for (int i = 0; i < cell.Length; i++)
        {
            if (cell[i] == Quote)
            {
                if (i + 1 == cell.Length || cell[i + 1] != Quote)
                {
                    return i;
                }

                i++;
            }
        }

        return -1;
    }
}
