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
        json.WriteOptional("title", piece.Title);
        json.WriteOptional("object", piece.ObjectKind);
        json.WriteOptional("stated", piece.Stated?.Text);
        WriteList(json, "parts", piece.Parts, (w, p) =>
        {
            w.WriteString("part", p.Part);
            if (!p.Original)
            {
                w.WriteBoolean("original", false);
            }

            w.WriteOptional("why", p.Why);
        });
        WriteList(json, "marks", piece.Marks, (w, m) =>
        {
            w.WriteOptional("text", m.Text);
            w.WriteOptional("part", m.Part);
            w.WriteOptional("patent", m.Patent);
        });
        WriteList(json, "features", piece.Features, (w, f) =>
        {
            w.WriteString("feature", f.Feature);
            w.WriteOptional("part", f.Part);
            w.WriteFlag("absent", f.Absent);
        });
        WriteList(json, "subjects", piece.Subjects, (w, s) =>
        {
            w.WriteString("subject", s.Subject);
            w.WriteOptional("part", s.Part);
        });
        WriteList(json, "inscriptions", piece.Inscriptions, (w, i) =>
        {
            w.WriteString("date", i.Date.Text);
            w.WriteOptional("text", i.Text);
            w.WriteString("of", PieceWords.Purposes.WordOf(i.Purpose));
            w.WriteOptional("part", i.Part);
        });
        WriteList(json, "records", piece.Records, (w, r) =>
        {
            w.WriteString("date", r.Date.Text);
            w.WriteOptional("what", r.What);
            w.WriteFlag("new", r.BoughtNew);
            w.WriteOptional("part", r.Part);
        });
        WriteList(json, "makers", piece.Makers, (w, m) =>
        {
            w.WriteString("maker", m.Maker);
            w.WriteOptional("form", m.Form);
            w.WriteOptional("address", m.Address);
            w.WriteOptional("part", m.Part);
        });
        WriteList(json, "adverts", piece.Adverts, (w, a) =>
        {
            w.WriteString("date", a.Date.Text);
            w.WriteOptional("what", a.What);
            w.WriteOptional("model", a.Model);
            w.WriteOptional("part", a.Part);
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
            json.WriteOptional("notBefore", window.NotBefore?.Text);
            json.WriteOptional("notAfter", window.NotAfter?.Text);
            json.WriteNumber("confidence", window.Confidence);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteOptional("by", opinion.By);
        json.WriteNames("restsOn", opinion.RestsOn);
        json.WriteOptional("label", opinion.Label);
        json.WriteOptional("part", opinion.Part);
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
