using NodaTime;
using Terminus;

namespace Catalogue
{
    /// <summary>What a catalogue asks of the library, in a library for every .NET.</summary>
    public static class Answers
    {
        /// <summary>The interval of a described piece, in EDTF.</summary>
        public static string Interval(string piece)
            => PieceDating.Of(Piece.Read(piece).OrThrow(), new LocalDate(2026, 11, 25)).Interval?.ToEdtf();

        /// <summary>The first year that a number of the United States' patents can have.</summary>
        public static int? Year(string number) => RegisterSet.BuiltIn.Read("US", "utility", number).Outer.NotBefore?.Year;
    }
}
