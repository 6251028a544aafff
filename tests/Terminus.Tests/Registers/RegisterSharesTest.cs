using Xunit.Abstractions;

namespace Terminus.Tests.Registers;

/// <summary>Measures the shares that registers state, and prints the table of docs/registers.md.</summary>
public class RegisterSharesTest(ITestOutputHelper output)
{
    // Small classes are not proof against a stated share: a row of the table fails only where it holds at least this many numbers.
    private const int Enough = 40;

    [Theory]
    [InlineData("utility")]
    [InlineData("design")]
    [InlineData("reissue")]
    public void LeavingEachDatedNumberOut_EveryWindowHoldsTheShareItStates(string right)
    {
        Register whole = RegisterSet.BuiltIn.Find("US", right)!;
        var tally = new Tally();
        foreach (RegisterRow row in whole.Rows.Where(IsPair))
        {
            var without = new Register("US", right, whole.Rows.Where(r => r.Dates.Days != 1 || IsOther(r, row)));
            tally.Add(without, row.First, row.Dates.FirstDay);
        }

        output.WriteLine("US " + right + ", each dated number left out in turn");
        tally.Check(output, Enough);
    }

    [Theory]
    [InlineData("utility", 2)]
    [InlineData("utility", 7)]
    [InlineData("utility", 0)]
    [InlineData("design", 2)]
    [InlineData("design", 0)]
    public void KeepingOneDatedNumberInSome_EveryWindowHoldsTheShareItStates(string right, int some)
    {
        Register whole = RegisterSet.BuiltIn.Find("US", right)!;
        var tally = new Tally();
        for (int fold = 0; fold < Math.Max(1, some); fold++)
        {
            RegisterRow[] pairs = [.. whole.Rows.Where(IsPair)];
            HashSet<RegisterRow> kept = some == 0 ? [] : [.. pairs.Where((_, i) => i * 7919 % 1009 % some == fold)];
            var thin = new Register("US", right, whole.Rows.Where(r => r.Dates.Days != 1 || kept.Contains(r)));
            foreach (RegisterRow row in pairs.Where(p => !kept.Contains(p)))
            {
                tally.Add(thin, row.First, row.Dates.FirstDay);
            }
        }

        output.WriteLine("US " + right + (some == 0 ? ", starts of years alone" : ", one dated number in " + some + " kept"));
        tally.Check(output, Enough);
    }

    [Fact]
    public void PublishedDatedPatents_LieInsideTheirOuterWindow()
    {
        var tally = new Tally();
        var missed = new List<string>();
        foreach (DatedNumbers.Dated dated in DatedNumbers.All().Where(d => d.Office == "US" && d.Day is not null))
        {
            Register register = RegisterSet.BuiltIn.Find("US", dated.Right)!;
            int number = int.Parse(dated.Number, System.Globalization.CultureInfo.InvariantCulture);
            if (register.Rows.Any(r => r.Dates.Days == 1 && r.First == number))
            {
                continue;
            }

            tally.Add(register, number, dated.Day!.Value);
            if (!register.TryWindow(number, out DateWindow outer) || !outer.ContainsDay(dated.Day.Value))
            {
                missed.Add(dated.ToString());
            }
        }

        output.WriteLine("US, published dated patents that the registers do not hold");
        tally.Check(output, int.MaxValue);
        output.WriteLine("outside the outer window: " + string.Join("; ", missed));
        Assert.Empty(missed);
    }

    // Numbers far away change nothing and cost time.
    private static bool IsOther(RegisterRow row, RegisterRow left)
        => (left.First < row.First || left.First > row.Last) && Math.Abs(row.First - left.First) < 200_000;

    private static bool IsPair(RegisterRow row)
        => row.Dates.Days == 1 && row.First == row.Last && row.Dates.FirstDay >= IssueDay.FirstTuesday;

    /// <summary>Counts, for each stated window by class of weeks possible, how often the true day lies in it.</summary>
    private sealed class Tally
    {
        private readonly SortedDictionary<string, (int Held, int All, double Stated)> counts = new(StringComparer.Ordinal);
        private int all;
        private int exact;
        private int week;
        private int twoWeeks;

        internal void Add(Register register, int number, int day)
        {
            NumberReading reading = register.Read(NumberPattern.Of(number));
            if (reading.Windows.Count == 0)
            {
                return;
            }

            Count("outer", reading.Windows[0], day);
            if (!register.TryLocate(number, out IssueWeeks weeks))
            {
                return;
            }

            all++;
            int off = Math.Abs(day - IssueDay.DayOf(weeks.Likeliest));
            exact += off == 0 ? 1 : 0;
            week += off <= 7 ? 1 : 0;
            twoWeeks += off <= 14 ? 1 : 0;
            string group = Group(weeks.Possible) + " weeks possible, stated ";
            foreach (StatedWindow window in reading.Windows.Skip(1))
            {
                Count(group + window.Confidence.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture), window, day);
            }
        }

        internal void Check(ITestOutputHelper output, int enough)
        {
            output.WriteLine(
                $"  best day exact {Share(exact, all)}, within one week {Share(week, all)}, two weeks {Share(twoWeeks, all)} of {all}");
            foreach ((string name, (int held, int count, double stated)) in counts)
            {
                output.WriteLine($"  {name,-40} {held,5} of {count,5} {Share(held, count)}");
            }

            foreach ((string name, (int held, int count, double stated)) in counts)
            {
                Assert.True(count < enough || held >= stated * count, name + ": " + Share(held, count) + " of " + count);
            }
        }

        private static string Group(int weeks)
            => weeks switch { 1 => "a 1", 2 => "b 2", <= 8 => "c 3-8", <= 20 => "d 9-20", <= 106 => "e 21-106", _ => "f more" };

        private static string Share(int part, int whole)
            => (whole == 0 ? 0 : (double)part / whole).ToString("0.000", System.Globalization.CultureInfo.InvariantCulture);

        private void Count(string name, StatedWindow window, int day)
        {
            counts.TryGetValue(name, out (int Held, int All, double Stated) now);
            counts[name] = (now.Held + (window.Window.ContainsDay(day) ? 1 : 0), now.All + 1, window.Confidence);
        }
    }
}
