using FsCheck;
using FsCheck.Fluent;

namespace Terminus.Tests;

/// <summary>A text of the kind that is typed from a thing, or any text at all.</summary>
public sealed record InscriptionText(string Value);

/// <content>Inscriptions.</content>
public static partial class Gens
{
    /// <summary>Texts for the reader of marks.</summary>
    public static class Marks
    {
        private static readonly string[] Pieces =
        [
            "PAT.", "PAT. AUG. 12 & 19 1884", "PAT. APR. 7 AND MAY 19 1885", "PATENTED CANADA 1912 U.S.A. 1910", "JUNE", "5TH", "1883", "Pat'd", "PATENTED", "PAT", "PEND.", "APL'D FOR", "DES.", "RE.", "REG. U.S. PAT. OFF.", "No.", "APR.", "17", "-94", "1894", "JAN.Y", "2D", "&", ",", ".", "/", " / ", "\n",
            "2,345,678", "123456", "D-123456", "10811/97", "2,4?4,1?2", "[illegible]", "[?]", "[ ]", "?", "[", "]", "D.R.G.M.", "D. R. P.", "Bté S.G.D.G.", "déposé", "Rd No", "MADE IN", "JAPAN",
            "OCCUPIED", "W. GERMANY", "U.S.A.", "STERLING", "1/20", "12K", "G.F.", "925", "©", "®", "◇", "実用新案", "登録第", "\0", "\uD83D", "\uDC00", "\u0301", "’", "–", "…", "A. MAKER", "P4T.", "I,234", "", " ", "  ",
        ];

        /// <summary>Pieces of inscriptions in any order, and any characters between them.</summary>
        public static Arbitrary<InscriptionText> Texts()
        {
            Gen<string> piece = Gen.Elements(Pieces);
            Gen<string> any = ArbMap.Default.GeneratorFor<char>().ArrayOf().Select(c => new string(c));
            Gen<string> part = Gen.Frequency((6, piece), (1, any), (2, Gen.Constant(" ")));
            return Gen.Sized(size => part.ArrayOf(Math.Min(size / 3, 30))).Select(p => new InscriptionText(string.Concat(p)))
                .ToArbitrary();
        }
    }
}
