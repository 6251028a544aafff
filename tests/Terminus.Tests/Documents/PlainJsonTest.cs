using System.Text;
using NodaTime;

namespace Terminus.Tests.Documents;

public class PlainJsonTest
{
    private static readonly LocalDate Day = new(1961, 7, 11);

    [Fact]
    public void AddEdtf_OpenEndsAndDays_AreAsTheWindowSays()
    {
        var json = new PlainJson(stackalloc byte[256]);
        json.Add("["u8);
        json.AddEdtf(DateWindow.From(Day));
        json.Add(","u8);
        json.AddEdtf(DateWindow.Until(Day));
        json.Add(","u8);
        json.AddEdtf(DateWindow.On(Day));
        json.Add(","u8);
        json.AddEdtf(DateWindow.Any);
        json.Add("]"u8);
        Assert.Equal("[\"1961-07-11/..\",\"../1961-07-11\",\"1961-07-11\",null]", Text(json));
    }

    [Fact]
    public void AddEnds_TheFirstAndTheLastDayOfTheCalendar_AreWritten()
    {
        var json = new PlainJson(stackalloc byte[96]);
        json.AddEnds(DateWindow.Between(new LocalDate(-9998, 1, 1), new LocalDate(9999, 12, 31)));
        Assert.Equal("\"notBefore\":\"-9998-01-01\",\"notAfter\":\"9999-12-31\"", Text(json));
    }

    [Fact]
    public void Add_NumbersAndFlags_AreAsJsonHasThem()
    {
        var json = new PlainJson(stackalloc byte[256]);
        json.Add(-44);
        json.Add(" "u8);
        json.Add((int?)null);
        json.Add(" "u8);
        json.Add(true);
        json.Add(" "u8);
        json.Add(false);
        json.Add(" "u8);
        json.AddRounded(0.1 + 0.2);
        json.Add(" "u8);
        json.AddRounded(0.00001);
        Assert.Equal("-44 null true false 0.3 1E-05", Text(json));
    }

    private static string Text(PlainJson json) => Encoding.ASCII.GetString(json.Bytes.ToArray());
}
