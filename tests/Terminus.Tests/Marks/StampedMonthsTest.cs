namespace Terminus.Tests.Marks;

/// <summary>The months as calendars of their languages name and shorten them, each with its first Tuesday of 1889.</summary>
public class StampedMonthsTest
{
    private static readonly int[] Tuesdays = [1, 5, 5, 2, 7, 4, 2, 6, 3, 1, 5, 3];

    [Theory]
    [InlineData("JANUARY FEBRUARY MARCH APRIL MAY JUNE JULY AUGUST SEPTEMBER OCTOBER NOVEMBER DECEMBER")]
    [InlineData("JAN FEB MAR APR MAY JUN JUL AUG SEP OCT NOV DEC")]
    [InlineData("JAN. FEB. MAR. APR. MAY. JUNE. JULY. AUG. SEPT. OCT. NOV. DEC.")]
    [InlineData("JAN.Y FEB.Y MCH. APL. MAY JUNE JULY AUG.T SEPT.R OCT.R NOV.R DEC.R")]
    [InlineData("JANUAR FEBRUAR MÄRZ APRIL MAI JUNI JULI AUGUST SEPTEMBER OKTOBER NOVEMBER DEZEMBER")]
    [InlineData("JANVIER FÉVRIER MARS AVRIL MAI JUIN JUILLET AOÛT SEPTEMBRE OCTOBRE NOVEMBRE DÉCEMBRE")]
    [InlineData("GENNAIO FEBBRAIO MARZO APRILE MAGGIO GIUGNO LUGLIO AGOSTO SETTEMBRE OTTOBRE NOVEMBRE DICEMBRE")]
    [InlineData("ENERO FEBRERO MARZO ABRIL MAYO JUNIO JULIO AGOSTO SEPTIEMBRE OCTUBRE NOVIEMBRE DICIEMBRE")]
    [InlineData("JANEIRO FEVEREIRO MARÇO ABRIL MAIO JUNHO JULHO AGOSTO SETEMBRO OUTUBRO NOVEMBRO DEZEMBRO")]
    [InlineData("JANUARI FEBRUARI MAART APRIL MEI JUNI JULI AUGUSTUS SEPTEMBER OKTOBER NOVEMBER DECEMBER")]
    [InlineData("I II III IV V VI VII VIII IX X XI XII")]
    [InlineData("1 2 3 4 5 6 7 8 9 10 11 12")]
    public void Read_MonthOfAnyLanguage_IsThatMonth(string months)
    {
        string[] names = months.Split(' ');
        for (int month = 1; month <= 12; month++)
        {
            string name = names[month - 1];
            string day = DateText.Digits(Tuesdays[month - 1]);
            string text = char.IsDigit(name[0]) ? $"PAT. {name}-{day}-1889" : name[0] is 'I' or 'V' or 'X' ? $"PAT. {day}.{name}.1889" : $"PAT. {name} {day} 1889";
            Mark mark = Assert.Single(Inscription.Read(text).Marks);
            Assert.Equal($"patent-date US utility {DateText.Iso(1889, month, Tuesdays[month - 1])} \"{text}\"", mark.ToString());
        }
    }

    [Theory] // The last day of each month as the calendar has it, and the day behind it that it has not.
    [InlineData(1889, "31 28 31 30 31 30 31 31 30 31 30 31")]
    [InlineData(1888, "31 29 31 30 31 30 31 31 30 31 30 31")]
    public void Read_LastDayOfAMonth_IsThere(int year, string lastDays)
    {
        string[] months = "JAN FEB MAR APR MAY JUN JUL AUG SEP OCT NOV DEC".Split(' ');
        int[] days = [.. lastDays.Split(' ').Select(day => int.Parse(day, System.Globalization.CultureInfo.InvariantCulture))];
        for (int month = 1; month <= 12; month++)
        {
            Assert.Equal(DateText.Iso(year, month, days[month - 1]), Date($"PAT. {months[month - 1]}. {days[month - 1]} {year}"));
            Assert.Null(Date($"PAT. {months[month - 1]}. {days[month - 1] + 1} {year}"));
        }
    }

    private static string? Date(string text) => Assert.Single(Inscription.Read(text).Marks).Date;
}
