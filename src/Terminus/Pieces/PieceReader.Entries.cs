using System.Text.Json;

namespace Terminus;

/// <content>The entries of a piece, one method each.</content>
internal static partial class PieceReader
{
    private static PiecePart? ReadPart(ref DocumentReader reader)
    {
        (string? part, bool original, string? why) = (null, true, null);
        if (!reader.OpenObject(PieceWords.Part))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "part": part = reader.ReadName("a part"); break;
                case "original": original = reader.ReadBool() ?? true; break;
                default: why = reader.ReadString(); break;
            }
        }

        return part is null ? null : new PiecePart(part, original, why);
    }

    private static PieceMark? ReadMark(ref DocumentReader reader)
    {
        (string? text, string? part, string? patent) = (null, null, null);
        if (!reader.OpenObject(PieceWords.Mark))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "text": text = reader.ReadString(); break;
                case "part": part = reader.ReadName("a part"); break;
                default: patent = reader.ReadName("a patent"); break;
            }
        }

        if (text is null && patent is null)
        {
            reader.Report("A mark has a \"text\", a \"patent\" or both; this one has neither.");
            return null;
        }

        return new PieceMark(text, part, patent);
    }

    private static PieceFeature? ReadFeature(ref DocumentReader reader)
    {
        (string? feature, string? part, bool absent) = (null, null, false);
        if (!reader.OpenObject(PieceWords.Feature))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "feature": feature = reader.ReadName("the id of a feature"); break;
                case "part": part = reader.ReadName("a part"); break;
                default: absent = reader.ReadBool() ?? false; break;
            }
        }

        return feature is null ? null : new PieceFeature(feature, part, absent);
    }

    private static PieceSubject? ReadSubject(ref DocumentReader reader)
    {
        (string? subject, string? part) = (null, null);
        if (!reader.OpenObject(PieceWords.Subject))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "subject": subject = reader.ReadName("the id of a subject"); break;
                default: part = reader.ReadName("a part"); break;
            }
        }

        return subject is null ? null : new PieceSubject(subject, part);
    }

    private static PieceInscription? ReadInscription(ref DocumentReader reader)
    {
        (EdtfDate? date, string? text, InscriptionPurpose? of, string? part) = (null, null, null, null);
        if (!reader.OpenObject(PieceWords.Inscription))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "date": date = reader.ReadEdtf(); break;
                case "text": text = reader.ReadString(); break;
                case "of": of = reader.ReadChoice(PieceWords.Purposes, "what the date is of"); break;
                default: part = reader.ReadName("a part"); break;
            }
        }

        return date is null ? null : new PieceInscription(date, of ?? InscriptionPurpose.Presentation, text, part);
    }

    private static PieceRecord? ReadRecord(ref DocumentReader reader)
    {
        (EdtfDate? date, string? what, bool boughtNew, string? part) = (null, null, false, null);
        if (!reader.OpenObject(PieceWords.Record))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "date": date = reader.ReadEdtf(); break;
                case "what": what = reader.ReadString(); break;
                case "new": boughtNew = reader.ReadBool() ?? false; break;
                default: part = reader.ReadName("a part"); break;
            }
        }

        return date is null ? null : new PieceRecord(date, what, boughtNew, part);
    }

    private static PieceMaker? ReadMaker(ref DocumentReader reader)
    {
        (string? maker, string? form, string? address, string? part) = (null, null, null, null);
        if (!reader.OpenObject(PieceWords.Maker))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "maker": maker = reader.ReadName("the id of a maker"); break;
                case "form": form = reader.ReadString(); break;
                case "address": address = reader.ReadString(); break;
                default: part = reader.ReadName("a part"); break;
            }
        }

        return maker is null ? null : new PieceMaker(maker, form, address, part);
    }

    private static PieceAdvert? ReadAdvert(ref DocumentReader reader)
    {
        (EdtfDate? date, string? what, string? model, string? part) = (null, null, null, null);
        if (!reader.OpenObject(PieceWords.Advert))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "date": date = reader.ReadEdtf(); break;
                case "what": what = reader.ReadString(); break;
                case "model": model = reader.ReadName("a model"); break;
                default: part = reader.ReadName("a part"); break;
            }
        }

        return date is null ? null : new PieceAdvert(date, what, model, part);
    }

    private static PieceOpinion? ReadOpinion(ref DocumentReader reader)
    {
        (ValueList<PieceWindow>? windows, string? by, List<string>? restsOn, string? label, string? part) = (null, null, null, null, null);
        if (!reader.OpenObject(PieceWords.Opinion))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "windows": windows = ReadList(ref reader, "windows", ReadWindow); break;
                case "by": by = reader.ReadString(); break;
                case "restsOn": restsOn = reader.ReadNames("what it rests on", "an id or a name"); break;
                case "label": label = reader.ReadString(); break;
                default: part = reader.ReadName("a part"); break;
            }
        }

        return windows is null ? null : new PieceOpinion(windows, by, restsOn, label, part);
    }

    private static PieceWindow? ReadWindow(ref DocumentReader reader)
    {
        (EdtfDate? notBefore, EdtfDate? notAfter, double? confidence) = (null, null, null);
        bool sound = true;
        if (!reader.OpenObject(PieceWords.Window))
        {
            return null;
        }

        while (reader.NextMember(out string member))
        {
            switch (member)
            {
                case "notBefore": sound &= TryReadEnd(ref reader, out notBefore); break;
                case "notAfter": sound &= TryReadEnd(ref reader, out notAfter); break;
                default: confidence = reader.ReadConfidence(); break;
            }
        }

        return confidence is { } c && sound ? new PieceWindow(notBefore, notAfter, c) : null;
    }

    // An open end may be written as null, as results write it.
    private static bool TryReadEnd(ref DocumentReader reader, out EdtfDate? date)
    {
        date = reader.Token == JsonTokenType.Null ? null : reader.ReadEdtf();
        return date is not null || reader.Token == JsonTokenType.Null;
    }
}
