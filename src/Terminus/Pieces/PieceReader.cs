using System.Text.Json;

namespace Terminus;

/// <summary>Reads piece documents. What is wrong is reported with its place and left out; the rest is read.</summary>
internal static partial class PieceReader
{
    private delegate T? Reader<T>(ref DocumentReader reader)
        where T : class;

    internal static DocumentResult<Piece> ReadOne(ReadOnlySpan<byte> utf8, string? fileName)
    {
        var reader = new DocumentReader(utf8, fileName);
        Piece? piece = ReadPiece(ref reader);
        return new DocumentResult<Piece>(piece, reader.Finish());
    }

    internal static List<DocumentResult<Piece>> ReadAll(ReadOnlySpan<byte> utf8, string? fileName)
    {
        var reader = new DocumentReader(utf8, fileName);
        if (reader.Token != JsonTokenType.StartArray)
        {
            return [ReadOne(utf8, fileName)];
        }

        var pieces = new List<Piece?>();
        reader.OpenArray("pieces");
        while (reader.NextItem())
        {
            pieces.Add(ReadPiece(ref reader));
        }

        return ProblemsByPiece.Share(pieces, reader.Finish());
    }

    /// <summary>Reads the piece the reader stands on, or null where it is none or has no id.</summary>
    internal static Piece? ReadPiece(ref DocumentReader reader)
    {
        if (!reader.OpenObject(PieceWords.Piece))
        {
            return null;
        }

        string? id = null;
        var piece = new PieceMembers();
        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "format": reader.ReadFormat(); break;
                case "id": id = reader.ReadNewName("an id"); break;
                case "title": piece.Title = reader.ReadString(); break;
                case "object": piece.ObjectKind = reader.ReadName("a kind of object"); break;
                case "stated": piece.Stated = reader.ReadEdtf(); break;
                case "parts": piece.Parts = ReadList(ref reader, "parts", ReadPart); break;
                case "marks": piece.Marks = ReadList(ref reader, "marks", ReadMark); break;
                case "features": piece.Features = ReadList(ref reader, "features", ReadFeature); break;
                case "subjects": piece.Subjects = ReadList(ref reader, "subjects", ReadSubject); break;
                case "inscriptions": piece.Inscriptions = ReadList(ref reader, "inscriptions", ReadInscription); break;
                case "records": piece.Records = ReadList(ref reader, "records", ReadRecord); break;
                case "makers": piece.Makers = ReadList(ref reader, "makers", ReadMaker); break;
                case "adverts": piece.Adverts = ReadList(ref reader, "adverts", ReadAdvert); break;
                case "opinions": piece.Opinions = ReadList(ref reader, "opinions", ReadOpinion); break;
                default: reader.Skip(); break;
            }
        }

        return id is null ? null : piece.ToPiece(id);
    }

    private static ValueList<T> ReadList<T>(ref DocumentReader reader, string what, Reader<T> read)
        where T : class
    {
        // Most lists have one or two entries.
        T[] items = [];
        int count = 0;
        if (reader.OpenArray(what))
        {
            while (reader.NextItem())
            {
                if (read(ref reader) is { } item)
                {
                    if (count == items.Length)
                    {
                        Array.Resize(ref items, Math.Max(1, count * 2));
                    }

                    items[count++] = item;
                }
            }
        }

        if (count < items.Length)
        {
            Array.Resize(ref items, count);
        }

        return ValueList<T>.Owning(items);
    }

    private struct PieceMembers
    {
        internal string? Title;
        internal string? ObjectKind;
        internal EdtfDate? Stated;
        internal ValueList<PiecePart>? Parts;
        internal ValueList<PieceMark>? Marks;
        internal ValueList<PieceFeature>? Features;
        internal ValueList<PieceSubject>? Subjects;
        internal ValueList<PieceInscription>? Inscriptions;
        internal ValueList<PieceRecord>? Records;
        internal ValueList<PieceMaker>? Makers;
        internal ValueList<PieceAdvert>? Adverts;
        internal ValueList<PieceOpinion>? Opinions;

        internal readonly Piece ToPiece(string id)
            => new(id, Title, ObjectKind, Stated, Parts, Marks, Features, Subjects, Inscriptions, Records, Makers, Adverts, Opinions);
    }
}
