using FsCheck;
using FsCheck.Fluent;
using NodaTime;

namespace Terminus.Tests;

/// <summary>The generators of the laws, one file for each folder of the library.</summary>
public static partial class Gens
{
    /// <summary>Days: often a few of 1956, so that ends coincide; often of the trade's period; sometimes of the whole calendar.</summary>
    public static Arbitrary<LocalDate> LocalDates() => Arb.From(Day);

    /// <summary>Windows of all shapes: any date, open to one side, one day, closed.</summary>
    public static Arbitrary<DateWindow> DateWindows() => Arb.From(Window, ShrinkWindow);

    /// <summary>Valid EDTF texts of all levels.</summary>
    public static Arbitrary<EdtfText> EdtfTexts() => Arb.From(Edtf.Select(text => new EdtfText(text)));

    /// <summary>Dates with X anywhere, whether or not a day fits.</summary>
    public static Arbitrary<UnspecifiedText> UnspecifiedTexts() => Arb.From(Unspecified.Select(text => new UnspecifiedText(text)));

    /// <summary>Texts that are nearly EDTF, or not at all.</summary>
    public static Arbitrary<JunkText> JunkTexts() => Arb.From(Junk.Select(text => new JunkText(text)), ShrinkJunk);

    internal static Gen<LocalDate> Day => Gen.Frequency(
        (4, Gen.Choose(1, 9).Select(d => new LocalDate(1956, 3, d))),
        (4, Gen.Choose(0, 100_000).Select(d => new LocalDate(1750, 1, 1).PlusDays(d))),
        (1, Gen.Choose(1, DayNumber.Last).Select(DayNumber.ToDate)),
        (1, Gen.Elements(new LocalDate(-9998, 1, 1), new LocalDate(9999, 12, 31), new LocalDate(0, 2, 29), new LocalDate(-1, 12, 31))));

    internal static Gen<DateWindow> Window => Gen.Frequency(
        (1, Gen.Constant(DateWindow.Any)),
        (2, Day.Select(DateWindow.From)),
        (2, Day.Select(DateWindow.Until)),
        (1, Day.Select(DateWindow.On)),
        (5, Day.Two().Select(days => DateWindow.Between(LocalDate.Min(days.Item1, days.Item2), LocalDate.Max(days.Item1, days.Item2)))));

    internal static Gen<string> Edtf => MakeEdtf();

    private static Gen<string> Digits(int count, string alphabet)
        => Gen.Elements(alphabet.ToCharArray()).ArrayOf(count).Select(chars => new string(chars));

    private static Gen<string> Unspecified
        => from sign in Gen.Frequency((4, Gen.Constant(string.Empty)), (1, Gen.Constant("-")))
           let pair = Digits(2, "0123X").Select(digits => "-" + digits)
           from year in Gen.Frequency((3, Digits(4, "01289X")), (2, Digits(4, "0X")), (1, Gen.Constant("XXXX")))
           from month in Gen.Frequency((1, Gen.Constant("")), (2, Gen.Elements("-02", "-XX", "-0X", "-1X", "-X2")), (1, pair))
           from day in Gen.Frequency((1, Gen.Constant("")), (2, Gen.Elements("-29", "-XX", "-3X", "-31", "-X9")), (1, pair))
           select sign + year + month + (month.Length == 0 ? string.Empty : day);

    private static Gen<string> Junk => Gen.Frequency(
        (3, Digits(12, "0123456789X-/.?~%YES[]{},TZ:+ ")),
        (2, Gen.Choose(0, 6).SelectMany(length => Digits(length, "019X-/.[,"))),
        (3, from text in Edtf
            from at in Gen.Choose(0, 40)
            from character in Gen.Elements("0139X-/.?~%YES[]{},TZ: \u0663\u2013\0".ToCharArray())
            from cut in Gen.Choose(0, 2)
            let place = Math.Min(at, text.Length)
            select $"{text[..place]}{character}{text[Math.Min(place + cut, text.Length)..]}"),
        (1, Gen.Choose(0, 2000).Select(length => new string('1', length))),
        (1, ArbMap.Default.GeneratorFor<string>().Select(text => text ?? string.Empty)));

    private static Gen<string> MakeEdtf()
    {
        Gen<string> qualifier = Gen.Frequency((6, Gen.Constant(string.Empty)), (1, Gen.Elements("?", "~", "%")));
        Gen<string> early = Date(1000, 1849, qualifier);
        Gen<string> late = Date(1850, 9999, qualifier);
        Gen<string> member = Gen.OneOf(early, late, Gen.Choose(1000, 1400).Select(y => $"{y}..{y + 7}"));
        Gen<string> time = Gen.Elements("T00:00:00", "T23:59:60Z", "T10:20:30+05:30", "T10:20:30-04");
        return Gen.Frequency(
            (6, early),
            (6, late),
            (1, Gen.Choose(10_000, int.MaxValue).SelectMany(y => Gen.Elements($"Y{y}", $"Y-{y}", $"Y{y}E3", $"Y-{y}S2"))),
            (1, Gen.Choose(1, 9999).SelectMany(y => Gen.Elements($"{y:0000}S1", $"{y:0000}S3", $"-{y:0000}", $"-{y:0000}-XX"))),
            (1, Gen.Choose(1000, 9999).SelectMany(y => time.Select(t => $"{y}-04-12{t}"))),
            (3, early.SelectMany(start => late.Select(end => start + "/" + end))),
            (2, Gen.OneOf(early, late).SelectMany(date => Gen.Elements(date + "/..", "../" + date, date + "/", "/" + date))),
            (2, from members in member.NonEmptyListOf()
                from brackets in Gen.Elements("[]", "{}")
                from dots in Gen.Elements("", "", "[", "]")
                let few = string.Join(",", members.Take(8).Select((m, i) => i == 0 && dots == "[" ? m[..4] : m))
                select brackets[0] + (dots == "[" ? ".." : "") + few + (dots == "]" ? ",2000.." : "") + brackets[1]));
    }

    // A date of a year between two, with qualifiers, groupings and unspecified digits; the first digit of its year is known.
    private static Gen<string> Date(int firstYear, int lastYear, Gen<string> qualifier)
    {
        Gen<string> plain = Gen.Choose(firstYear, lastYear).Select(y => $"{y:0000}");
        Gen<string> year = Gen.Frequency((6, plain), (1, plain.Select(y => $"{y[..3]}X")), (1, plain.Select(y => $"{y[..2]}XX")));
        Gen<string> month = Gen.Frequency((5, Gen.Choose(1, 12).Select(m => $"{m:00}")), (1, Gen.Elements("XX", "0X", "1X")));
        Gen<string> day = Gen.Frequency((5, Gen.Choose(1, 28).Select(d => $"{d:00}")), (1, Gen.Elements("XX", "0X", "1X", "2X")));
        Gen<string> yearOnly = year.SelectMany(y => qualifier.Select(q => y + q));
        Gen<string> grouping = from y in year
                               from code in Gen.Choose(21, 41)
                               from q in qualifier
                               select $"{y}-{code}{q}";
        Gen<string> withMonth = from y in year
                                from m in month
                                from left in qualifier
                                from right in qualifier
                                select $"{y}-{left}{m}{right}";
        Gen<string> withDay = from ym in withMonth
                              from d in day
                              from left in qualifier
                              from right in qualifier
                              select $"{ym}-{left}{d}{right}";
        return Gen.Frequency((3, yearOnly), (1, grouping), (3, withMonth), (5, withDay));
    }

    private static IEnumerable<DateWindow> ShrinkWindow(DateWindow window)
    {
        if (window.NotBefore is { } first)
        {
            yield return DateWindow.Between(null, window.NotAfter);
            yield return DateWindow.On(first);
        }

        if (window.NotAfter is not null)
        {
            yield return DateWindow.Between(window.NotBefore, null);
        }
    }

    private static IEnumerable<JunkText> ShrinkJunk(JunkText junk)
        => Enumerable.Range(0, Math.Min(junk.Value.Length, 50)).Select(i => new JunkText(junk.Value.Remove(i, 1)));
}

/// <summary>A valid EDTF text.</summary>
public sealed record EdtfText(string Value);

/// <summary>A date with unspecified digits that may fit no day.</summary>
public sealed record UnspecifiedText(string Value);

/// <summary>A text that is probably not EDTF.</summary>
public sealed record JunkText(string Value);
