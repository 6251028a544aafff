using FsCheck;
using FsCheck.Fluent;

namespace Terminus.Tests;

public static partial class Gens
{
    private static readonly string[] Parts = ["back", "pin", "face", "box"];

    private static readonly string[] Words = ["a receipt", "é / ü", "tab\tand \"quotes\"", "<b>", "two\nlines"];

    public static Arbitrary<Piece> Pieces() => Arb.From(PieceGen());

    private static Gen<Piece> PieceGen()
        => from id in Gen.Elements("P-1", "P-2", "Ä 3")
           from title in Optional(Gen.Elements(Words))
           from stated in Optional(PieceDate())
           from parts in ListOf(
               from part in Gen.Elements(Parts)
               from original in Gen.Elements(true, false)
               from why in Optional(Gen.Elements(Words))
               select new PiecePart(part, original, why))
           from marks in ListOf(
               from text in Gen.Elements("PAT. PEND.", "PAT. APR. 17-94", "STERLING", "?", "D.R.G.M. 171230")
               from part in Part()
               from patent in Optional(Gen.Constant("US utility 2999999"))
               select new PieceMark(text, part, patent))
           from features in ListOf(
               from feature in Gen.Elements("t.hook", "t.snap", "t.catch", "t.unknown", "t.undated")
               from part in Part()
               from absent in Gen.Elements(true, false)
               select new PieceFeature(feature, part, absent))
           from subjects in ListOf(from part in Part() select new PieceSubject("sub.kite", part))
           from inscriptions in ListOf(
               from date in PieceDate()
               from of in Gen.Elements(InscriptionPurpose.Presentation, InscriptionPurpose.Commemorative, InscriptionPurpose.Since)
               from part in Part()
               select new PieceInscription(date, of, null, part))
           from records in ListOf(
               from date in PieceDate()
               from what in Optional(Gen.Elements(Words))
               from boughtNew in Gen.Elements(true, false)
               select new PieceRecord(date, what, boughtNew))
           from makers in ListOf(from form in Optional(Gen.Constant("OLD NAME")) select new PieceMaker("t.maker", form))
           from adverts in ListOf(from date in PieceDate() select new PieceAdvert(date, "a trade list", "Model A"))
           from opinions in ListOf(OpinionGen())
           select new Piece(id, title, null, stated, parts, marks, features, subjects, inscriptions, records, makers, adverts, opinions);

    private static Gen<PieceOpinion> OpinionGen()
        => from windows in ListOf(
               from notBefore in Optional(PieceDate())
               from notAfter in Optional(PieceDate())
               from confidence in Gen.Elements(0.0, 0.5, 0.8, 0.9, 0.98, 1.0)
               select new PieceWindow(notBefore, notAfter, confidence))
           from who in Optional(Gen.Elements(Words))
           from restsOn in ListOf(Gen.Elements("t.hook", "a letter"))
           from part in Part()
           select new PieceOpinion(windows, who, restsOn, null, part);

    private static Gen<EdtfDate> PieceDate()
        => Gen.Elements("1894-04-17", "1936", "1955~", "196X", "1910?", "1950/1955", "../1920", "1961-07-11", "18XX").Select(EdtfDate.Parse);

    private static Gen<string?> Part() => Optional(Gen.Elements(Parts));

    private static Gen<T?> Optional<T>(Gen<T> value)
        where T : class
        => Gen.Frequency((1, Gen.Constant<T?>(null)), (2, value.Select(v => (T?)v)));

    private static Gen<List<T>> ListOf<T>(Gen<T> item)
        => from count in Gen.Choose(0, 3)
           from items in Gen.ArrayOf(item, count)
           select items.ToList();
}
