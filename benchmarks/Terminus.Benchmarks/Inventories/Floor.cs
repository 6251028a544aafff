using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Terminus.Benchmarks.Inventories;

/// <summary>
/// The least that a program could do with the same collection: one thread reads each line strictly with the platform's serializer and writes a
/// ready result of the same bytes. It dates nothing.
/// </summary>
internal sealed class Floor
{
    // So many ready results are written over and over; all would not stay in memory.
    private const int ReadyResults = 2000;

    private const int InputLength = 1 << 20;

    private readonly FloorResult[] ready;
    private readonly ArrayBufferWriter<byte> buffer = new(1 << 17);

    /// <param name="answers">The answers of the first pieces, whose bytes the ready results have.</param>
    internal Floor(byte[] answers)
    {
        string[] lines = Encoding.UTF8.GetString(answers).Split('\n', ReadyResults + 1, StringSplitOptions.RemoveEmptyEntries);
        ready = [.. lines.Take(ReadyResults).Select(line => JsonSerializer.Deserialize(line, FloorContext.Default.FloorResult)!)];
        for (int i = 0; i < ready.Length; i++)
        {
            string written = Encoding.UTF8.GetString(Write(new MemoryStream(), [ready[i]]).ToArray()).TrimEnd('\n');
            if (written != lines[i])
            {
                throw new InvalidOperationException($"The floor writes other bytes than the answer.\n{written}\n{lines[i]}");
            }
        }
    }

    /// <summary>Reads all lines of a stream and writes a ready result for each; how many there were.</summary>
    internal int Run(Stream lines, Stream output)
    {
        int pieces = 0;
        int held = 0;
        var input = new byte[InputLength];
        using var json = NewWriter();
        while (lines.Read(input, held, input.Length - held) is var read and > 0)
        {
            ReadOnlySpan<byte> rest = input.AsSpan(0, held + read);
            while (rest.IndexOf((byte)'\n') is var end and >= 0)
            {
                FloorPiece piece = JsonSerializer.Deserialize(rest[..end], FloorContext.Default.FloorPiece)!;
                rest = rest[(end + 1)..];
                WriteOne(json, ready[pieces++ % ready.Length]);
                if (buffer.WrittenCount > 1 << 16 || piece.Id.Length == 0)
                {
                    Drain(output);
                }
            }

            held = rest.Length;
            rest.CopyTo(input);
        }

        Drain(output);
        return pieces;
    }

    private MemoryStream Write(MemoryStream output, FloorResult[] results)
    {
        using var json = NewWriter();
        foreach (FloorResult result in results)
        {
            WriteOne(json, result);
        }

        Drain(output);
        return output;
    }

    private Utf8JsonWriter NewWriter() => new(buffer, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true });

    private void WriteOne(Utf8JsonWriter json, FloorResult result)
    {
        JsonSerializer.Serialize(json, result, FloorContext.Default.FloorResult);
        json.Flush();
        json.Reset();
        buffer.Write("\n"u8);
    }

    private void Drain(Stream output)
    {
        output.Write(buffer.WrittenSpan);
        buffer.ResetWrittenCount();
    }
}
