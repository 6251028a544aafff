using System.Text.Json;

namespace Terminus;

/// <summary>Writes piece documents.</summary>
internal static class PieceWriter
{
    internal static string ToJson(Piece piece) => DocumentWriting.ToText(DocumentWriting.Indented, json => Write(json, piece));

    internal static void Write(Utf8JsonWriter json, Piece piece)
    {
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteString("id", piece.Id);
        json.WriteOptional("title"u8, piece.Title);
        json.WriteOptional("object"u8, piece.ObjectKind);
        json.WriteOptional("stated"u8, piece.Stated?.Text);
        WriteList(json, "parts", piece.Parts, (w, p) =>
        {
            w.WriteString("part", p.Part);
            if (!p.Original)
            {
                w.WriteBoolean("original", false);
            }

            w.WriteOptional("why"u8, p.Why);
        });
        WriteList(json, "marks", piece.Marks, (w, m) =>
        {
            w.WriteOptional("text"u8, m.Text);
            w.WriteOptional("part"u8, m.Part);
            w.WriteOptional("patent"u8, m.Patent);
        });
        WriteList(json, "features", piece.Features, (w, f) =>
        {
            w.WriteString("feature", f.Feature);
            w.WriteOptional("part"u8, f.Part);
            w.WriteFlag("absent"u8, f.Absent);
        });
        WriteList(json, "subjects", piece.Subjects, (w, s) =>
        {
            w.WriteString("subject", s.Subject);
            w.WriteOptional("part"u8, s.Part);
        });
        WriteList(json, "inscriptions", piece.Inscriptions, (w, i) =>
        {
            w.WriteString("date", i.Date.Text);
            w.WriteOptional("text"u8, i.Text);
            w.WriteString("of", PieceWords.Purposes.WordOf(i.Purpose));
            w.WriteOptional("part"u8, i.Part);
        });
        WriteList(json, "records", piece.Records, (w, r) =>
        {
            w.WriteString("date", r.Date.Text);
            w.WriteOptional("what"u8, r.What);
            w.WriteFlag("new"u8, r.BoughtNew);
            w.WriteOptional("part"u8, r.Part);
        });
        WriteList(json, "makers", piece.Makers, (w, m) =>
        {
            w.WriteString("maker", m.Maker);
            w.WriteOptional("form"u8, m.Form);
            w.WriteOptional("address"u8, m.Address);
            w.WriteOptional("part"u8, m.Part);
        });
        WriteList(json, "adverts", piece.Adverts, (w, a) =>
        {
            w.WriteString("date", a.Date.Text);
            w.WriteOptional("what"u8, a.What);
            w.WriteOptional("model"u8, a.Model);
            w.WriteOptional("part"u8, a.Part);
        });
        WriteList(json, "opinions", piece.Opinions, WriteOpinion);
        json.WriteEndObject();
    }

    private static void WriteOpinion(Utf8JsonWriter json, PieceOpinion opinion)
    {
        json.WriteStartArray("windows");
        foreach (PieceWindow window in opinion.Windows)
        {
            json.WriteStartObject();
            json.WriteOptional("notBefore"u8, window.NotBefore?.Text);
            json.WriteOptional("notAfter"u8, window.NotAfter?.Text);
            json.WriteNumber("confidence", window.Confidence);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteOptional("by"u8, opinion.By);
        json.WriteNames("restsOn"u8, opinion.RestsOn);
        json.WriteOptional("label"u8, opinion.Label);
        json.WriteOptional("part"u8, opinion.Part);
    }

    private static void WriteList<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        if (items.Count == 0)
        {
            return;
        }

        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
