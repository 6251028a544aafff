using System.Buffers;
using System.IO.Pipelines;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using nietras.SeparatedValues;

namespace Terminus.Demo.Csv;

/// <summary>Turns a collection in CSV into piece documents, one a line, as they are asked for. What is wrong is then said of the documents.</summary>
internal static class CsvPieces
{
    private const int FlushFrom = 64 * 1024;

    /// <summary>The piece documents of a collection. The separator is the one the header has: a comma, a semicolon or a tab.</summary>
    /// <param name="csv">The collection.</param>
    /// <param name="report">Is told of a row whose quotation marks join it with others, before the documents end.</param>
    /// <param name="cancellation">Ends the reading.</param>
    internal static Stream AsJsonLines(Stream csv, Action<DocumentProblem> report, CancellationToken cancellation)
    {
        var pipe = new Pipe();
        _ = Task.Run(() => FillAsync(csv, pipe.Writer, report, cancellation), cancellation);
        return pipe.Reader.AsStream();
    }

    /// <summary>Writes the piece documents into a pipe. A failure goes through it to whoever reads from it.</summary>
    internal static async Task FillAsync(Stream csv, PipeWriter output, Action<DocumentProblem> report, CancellationToken cancellation)
    {
        Exception? failure = null;
        try
        {
            await WriteRowsAsync(csv, output, report, cancellation);
        }
        catch (Exception wrong) when (wrong is IOException or InvalidDataException or OperationCanceledException)
        {
            failure = wrong;
        }
        catch (Exception wrong) when (wrong is ArgumentException or NotSupportedException or InvalidOperationException)
        {
            failure = new InvalidDataException("The collection cannot be read as CSV: " + wrong.Message, wrong);
        }

        await output.CompleteAsync(failure);
    }

    private static async Task WriteRowsAsync(Stream csv, PipeWriter output, Action<DocumentProblem> report, CancellationToken cancellation)
    {
        using var text = new StreamReader(csv, new UTF8Encoding(false), detectEncodingFromByteOrderMarks: true, leaveOpen: true);
        using SepReader rows = Sep.Reader(o => o with { Unescape = true, DisableColCountCheck = true }).From(text);
        var columns = new CsvColumns(rows.Header.ColNames);
        using var json = new Utf8JsonWriter(output, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        while (rows.MoveNext())
        {
            if (CsvQuotes.AreSound(rows.Current.Span, rows.Spec.Sep.Separator))
            {
                Write(json, columns, rows.Current);
            }
            else
            {
                report(CsvQuotes.Problem(rows.Current));
                json.WriteStringValue(rows.Current.Span);
            }

            await json.FlushAsync(cancellation);
            json.Reset();
            output.Write("\n"u8);
            if (output.UnflushedBytes >= FlushFrom)
            {
                await output.FlushAsync(cancellation);
            }
        }
    }

    private static void Write(Utf8JsonWriter json, CsvColumns columns, SepReader.Row row)
    {
        var cells = new string[row.ColCount];
        for (int i = 0; i < cells.Length; i++)
        {
            cells[i] = FormulaGuard.Off(row[i].ToString());
        }

        columns.Write(json, cells);
    }
}
