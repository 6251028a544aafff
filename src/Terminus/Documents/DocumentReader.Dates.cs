namespace Terminus;

/// <content>Dates, which are EDTF strings.</content>
internal ref partial struct DocumentReader
{
    private static readonly TextsReadBefore<EdtfDate> Dates = new();

    /// <summary>A date, as an EDTF string that lies in the ISO calendar; the message says what is wrong with another text.</summary>
    internal EdtfDate? ReadEdtf()
    {
        if (IsPlainString && Dates.Find(json.ValueSpan) is { } known)
        {
            return known;
        }

        string? text = ReadString("a date, an EDTF string such as \"1956\", \"195X\", \"1956~\" or \"1956-03-06/1961\",");
        if (text is null)
        {
            return null;
        }

        if (!EdtfDate.TryParse(text, out EdtfDate? date, out EdtfError? error))
        {
            Report("\"" + Cut(text) + "\" is no EDTF date: " + error.Reason);
            return null;
        }

        if (date.Window is null)
        {
            Report("The date \"" + Cut(text) + "\" lies outside the years -9998 to 9999.");
            return null;
        }

        if (IsPlainString)
        {
            Dates.Keep(json.ValueSpan, date);
        }

        return date;
    }
}
