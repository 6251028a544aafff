using NodaTime;

namespace Terminus.Tests.EvidenceKinds;

/// <summary>
/// What an item states, as text that a test can spell out: one line a window, such as <c>1961-07-11/.. (0.98)</c>.
/// </summary>
/// <remarks>
/// The expected windows in this folder are those of the table of house defaults, worked out by hand. The defaults are judgements of the
/// house with no published source.
/// </remarks>
internal static class Stated
{
    internal static string[] By(Terminus.Evidence evidence, Assumptions? assumptions = null)
        => [.. evidence.StatedWindows(assumptions).Select(w => w.ToString())];

    internal static EvidenceDate Date(string edtf) => EvidenceDate.Parse(edtf);

    /// <summary>A date as a register estimates it: sure of its year, less sure of a fortnight and of a day.</summary>
    internal static EvidenceDate Estimated(double fortnight, double day)
        => new(
        [
            new StatedWindow(DateWindow.InYear(1961), 1),
            new StatedWindow(DateWindow.Between(new LocalDate(1961, 7, 4), new LocalDate(1961, 7, 18)), fortnight),
            new StatedWindow(DateWindow.On(new LocalDate(1961, 7, 11)), day),
        ]);
}
