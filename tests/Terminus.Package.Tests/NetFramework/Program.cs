using System;
using NodaTime;
using Terminus;

namespace Bench
{
    internal static class Program
    {
        private static void Main()
        {
            Evidence[] evidence =
            {
                new PatentIssued(EvidenceDate.On(new LocalDate(1961, 7, 11)), office: "US", right: "utility", part: "back"),
                new KnownBy(EvidenceDate.InYear(1963), what: "sales receipt", boughtNew: true),
            };
            Dating dating = Dating.Of(evidence, new LocalDate(2026, 11, 25));
            Console.WriteLine(dating.Interval(0.9).ToEdtf());
            Console.WriteLine(RegisterSet.BuiltIn.Read("US", "utility", "2,966,681").Outer.NotBefore.Value.Year);
        }
    }
}
