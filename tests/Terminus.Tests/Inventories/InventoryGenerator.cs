using System.Globalization;
using System.Text;

namespace Terminus.Tests.Inventories;

/// <summary>
/// Realistic inventories of any size, one piece a line: mostly a feature or two and now and then a mark, a maker, a subject, an
/// inscription or a record, as a dealer notes them. The same seed gives the same lines. All of it is invented.
/// </summary>
/// <remarks>
/// A piece has a true year, and its evidence fits that year save for one item in fourteen, as in married or repaired pieces. Lines have
/// about 400 bytes. The shares are a guess at what collections look like, no source.
/// </remarks>
internal sealed class InventoryGenerator(ulong seed)
{
    private static readonly string[] Objects = ["cuff fastening", "brooch", "collar button", "pocket tool", "belt clasp"];
    private static readonly string[] Finishes = ["gilt", "enamel", "silvered", "plain", "engine-turned", "mother-of-pearl"];
    private static readonly string[] PartNames = ["back", "pin", "face", "hinge"];
    private static readonly string[] Words = ["PAT. PEND.", "PATENTED", "MADE IN U.S.A.", "STERLING", "GES. GESCH.", "DEPOSE", "14K GF", "PAT. APL'D FOR"];
    private static readonly string[] Months = ["JAN.", "FEB.", "MAR.", "APR.", "MAY", "JUNE", "JULY", "AUG.", "SEPT.", "OCT.", "NOV.", "DEC."];

    private readonly SplitMix64 random = new(seed);
    private readonly StringBuilder line = new();
    private int year;
    private int count;

    /// <summary>The lines of an inventory, each with its line feed.</summary>
    internal static byte[] Utf8(ulong seed, int pieces)
    {
        using var stream = new MemoryStream();
        Write(seed, pieces, stream);
        return stream.ToArray();
    }

    /// <summary>Writes the lines of an inventory into a stream.</summary>
    internal static void Write(ulong seed, int pieces, Stream stream)
    {
        var generator = new InventoryGenerator(seed);
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 64 * 1024, leaveOpen: true);
        for (int i = 0; i < pieces; i++)
        {
            writer.Write(generator.Next());
            writer.Write('\n');
        }
    }

    /// <summary>The next piece, as a document on one line.</summary>
    internal string Next()
    {
        year = GeneratedReference.FirstYear + random.NextInt(GeneratedReference.Years);
        string kind = Pick(Objects);
        line.Clear().Append("{\"id\":\"INV-").Append((++count).ToString("0000000", CultureInfo.InvariantCulture))
            .Append("\",\"title\":\"").Append(kind).Append(", ").Append(Pick(Finishes)).Append("\",\"object\":\"").Append(kind).Append('"');
        if (Chance(0.3))
        {
            line.Append(",\"stated\":\"").Append(Text(year - (year % 10))).Append(Chance(0.5) ? "~\"" : "\"");
        }

        if (Chance(0.05))
        {
            line.Append(",\"parts\":[{\"part\":\"face\"},{\"part\":\"pin\",\"original\":false,\"why\":\"a later pin\"}]");
        }

        List("marks", Chance(0.5) ? 1 + random.NextInt(2) : 0, Mark);
        List("features", Chance(0.85) ? 1 + random.NextInt(3) : 0, Feature);
        List("subjects", Chance(0.1) ? 1 : 0, Subject);
        List("inscriptions", Chance(0.08) ? 1 : 0, () => Dated(year + random.NextInt(8), "text", "To Q. from the works", ",\"of\":\"presentation\""));
        List("records", Chance(0.1) ? 1 : 0, () => Dated(year + random.NextInt(15), "what", "sales receipt", Chance(0.5) ? ",\"new\":true" : ""));
        List("makers", Chance(0.25) ? 1 : 0, Maker);
        List("adverts", Chance(0.1) ? 1 : 0, Advert);
        List("opinions", Chance(0.05) ? 1 : 0, Opinion);
        return line.Append('}').ToString();
    }

    private void List(string name, int entries, Action entry)
    {
        if (entries == 0)
        {
            return;
        }

        line.Append(",\"").Append(name).Append("\":[");
        for (int i = 0; i < entries; i++)
        {
            line.Append(i == 0 ? "" : ",");
            entry();
        }

        line.Append(']');
    }

    private void Mark()
    {
        line.Append("{\"text\":\"");
        int patent = Fitting(GeneratedReference.Patents, i => GeneratedReference.PatentYear(i) <= year && GeneratedReference.PatentYear(i) > year - 20);
        double kind = random.NextDouble();
        if (kind < 0.4)
        {
            line.Append("PAT. ").Append(GeneratedReference.PatentNumber(patent)).Append("\",\"patent\":\"").Append(GeneratedReference.PatentId(patent));
        }
        else if (kind < 0.6)
        {
            line.Append("PAT. ").Append(Pick(Months)).Append(' ').Append(Text(1 + random.NextInt(28))).Append(", ").Append(Text(GeneratedReference.PatentYear(patent)));
        }
        else
        {
            line.Append(Pick(Words));
        }

        line.Append("\",\"part\":\"back\"}");
    }

    private void Feature()
    {
        int feature = Fitting(GeneratedReference.Features, i => GeneratedReference.FeatureStart(i) <= year && GeneratedReference.FeatureEnd(i) >= year);
        line.Append("{\"feature\":\"").Append(GeneratedReference.FeatureId(feature)).Append(Chance(0.01) ? "x\"" : "\"");
        if (Chance(0.7))
        {
            line.Append(",\"part\":\"").Append(Pick(PartNames)).Append('"');
        }

        line.Append(Chance(0.05) ? ",\"absent\":true}" : "}");
    }

    private void Subject()
    {
        int subject = Fitting(GeneratedReference.Subjects, i => GeneratedReference.SubjectYear(i) <= year);
        line.Append("{\"subject\":\"").Append(GeneratedReference.SubjectId(subject)).Append("\",\"part\":\"face\"}");
    }

    private void Maker()
    {
        int maker = Fitting(GeneratedReference.Makers, i => GeneratedReference.MakerStart(i) <= year && GeneratedReference.MakerEnd(i) >= year);
        line.Append("{\"maker\":\"").Append(GeneratedReference.MakerId(maker)).Append("\"}");
    }

    private void Advert()
    {
        int model = Fitting(GeneratedReference.Models, i => Math.Abs(GeneratedReference.ModelYear(i) - year) <= 8);
        Dated(year - 3 + random.NextInt(6), "what", "trade catalogue, p. 14", Chance(0.5) ? ",\"model\":\"" + GeneratedReference.Model(model) + "\"" : "");
    }

    private void Opinion() => line
        .Append("{\"windows\":[{\"notBefore\":\"").Append(Text(year - 12)).Append("\",\"notAfter\":\"").Append(Text(year + 12))
        .Append("\",\"confidence\":0.7}],\"by\":\"a colleague\"}");

    private void Dated(int date, string member, string words, string more)
        => line.Append("{\"date\":\"").Append(Text(date)).Append("\",\"").Append(member).Append("\":\"").Append(words).Append('"').Append(more).Append('}');

    // One of the entries that fit the year, or any where none does; one time in fourteen any at all.
    private int Fitting(int entries, Func<int, bool> fits)
    {
        int from = random.NextInt(entries);
        if (Chance(1.0 / 14))
        {
            return from;
        }

        for (int i = 0; i < entries; i++)
        {
            int entry = (from + i) % entries;
            if (fits(entry))
            {
                return entry;
            }
        }

        return from;
    }

    private bool Chance(double share) => random.NextDouble() < share;

    private string Pick(string[] words) => words[random.NextInt(words.Length)];

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
