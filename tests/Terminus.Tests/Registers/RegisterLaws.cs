using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Terminus.Tests.Registers;

[Properties(Arbitrary = [typeof(Gens)], MaxTest = 500)]
public class RegisterLaws
{
    [Property]
    public bool TheNumbersOfTheWindowOfANumberHoldTheNumber(RegisteredNumber one)
        => one.Register.Read(one.Text).Windows.All(
            w => one.Register.Numbers(w.Window).Any(r => r.Series == one.In.Name && r.Contains(one.Number)));

    [Property]
    public bool WindowsRiseWithNumbersInsideASeries(RegisteredNumber one)
    {
        DateWindow low = one.In.Outer(Math.Min(one.Number, one.Other));
        DateWindow high = one.In.Outer(Math.Max(one.Number, one.Other));
        return low.Low <= high.Low && low.High <= high.High;
    }

    [Property]
    public bool EstimatedIssueDaysRiseWithNumbers(RegisteredNumber one)
        => !one.Register.TryLocate(Math.Min(one.Number, one.Other), out IssueWeeks low)
            || !one.Register.TryLocate(Math.Max(one.Number, one.Other), out IssueWeeks high)
            || (low.Likeliest <= high.Likeliest && low.Earliest <= high.Earliest && low.Latest <= high.Latest);

    [Property]
    public bool TheLikelyNumbersOfTheBestDayHoldTheNumber(RegisteredNumber one)
        => !one.Register.TryLocate(one.Number, out IssueWeeks weeks)
            || one.Register.Numbers(weeks.Within(0)).Any(r => r.Likely is { } likely && likely.Contains(one.Number));

    [Property]
    public bool WindowsAreNestedAndTheirConfidencesNeverRise(RegisteredNumber one)
    {
        IReadOnlyList<StatedWindow> windows = one.Register.Read(one.Text).Windows;
        return windows.Count > 0 && windows.Zip(windows.Skip(1)).All(
            pair => pair.First.Window.Contains(pair.Second.Window)
                && pair.First.Window != pair.Second.Window
                && pair.First.Confidence >= pair.Second.Confidence);
    }

    [Property]
    public bool LosingAnyDigitNeverNarrowsTheWindow(RegisteredNumber one, NonNegativeInt at)
    {
        string digits = DateText.Digits(one.Number);
        int lost = at.Get % digits.Length;
        DateWindow whole = one.Register.Read(one.Text).Outer;
        return one.Register.Read(one.Written(digits[..lost] + "?" + digits[(lost + 1)..])).Outer.Contains(whole)
            && one.Register.Read(one.Written("…" + digits[lost..])).Outer.Contains(whole);
    }

    [Property]
    public bool SeparatorsLettersAndCaseOfTheNumberChangeNothing(RegisteredNumber one)
    {
        string grouped = one.Number.ToString("N0", System.Globalization.CultureInfo.InvariantCulture);
        return one.Register.Read("No. " + one.Written(grouped)) == one.Register.Read(one.Text)
            && one.Register.Read(one.Written(grouped.Replace(',', ' '))) == one.Register.Read(one.Text);
    }

    [Property]
    public bool TheOuterWindowIsTheOneThatIsFoundWithoutAReading(RegisteredNumber one)
        => one.Register.TryWindow(one.Number, out DateWindow window) && window.Contains(one.In.Outer(one.Number));

    [Property]
    public bool AnyTextGivesAReadingWithAReason(string? text)
    {
        NumberReading reading = RegisterSet.BuiltIn.Read("US", "utility", text ?? "");
        return reading.Reasons.Count > 0 && reading.Reasons.All(r => ReasonText.Of(r) != r.ToString());
    }

    [Property]
    public bool EveryReasonOfAReadingHasWords(RegisteredNumber one)
        => one.Register.Read(one.Text).Reasons.All(r => ReasonText.Rules.Contains(r.Rule));

    [Property(MaxTest = 20)]
    public bool OrderOfRowsChangesNothing(int seed)
    {
        Register known = RegisterSet.BuiltIn.Find("US", "reissue")!;
        var random = new Random(seed);
        var shuffled = new Register("US", "reissue", known.Rows.OrderBy(_ => random.Next()));
        return Enumerable.Range(1, 300)
            .Select(i => DateText.Digits(i * 110))
            .All(number => shuffled.Read(number).Windows.SequenceEqual(known.Read(number).Windows));
    }
}
