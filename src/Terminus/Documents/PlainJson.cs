using System.Buffers.Text;

namespace Terminus;

/// <summary>
/// JSON of days, numbers and flags, put together in bytes: nothing in it has to be escaped, so a writer copies it whole. On one line, without
/// spaces.
/// </summary>
/// <param name="into">Room for all of it.</param>
internal ref struct PlainJson(Span<byte> into)
{
    private readonly Span<byte> bytes = into;
    private int length;

    /// <summary>What was added so far.</summary>
    internal readonly ReadOnlySpan<byte> Bytes => bytes.Slice(0, length);

    /// <summary>Adds JSON as it stands: braces, commas and the names of members.</summary>
    internal void Add(ReadOnlySpan<byte> json)
    {
        json.CopyTo(bytes.Slice(length));
        length += json.Length;
    }

    /// <summary>Adds <c>true</c> or <c>false</c>.</summary>
    internal void Add(bool flag) => Add(flag ? "true"u8 : "false"u8);

    /// <summary>Adds a number, rounded as numbers in documents are.</summary>
    internal void AddRounded(double value) => length += DocumentWriting.WriteRounded(value, bytes.Slice(length));

    /// <summary>Adds a whole number, <c>null</c> where there is none.</summary>
    internal void Add(int? number)
    {
        if (number is not { } value)
        {
            Add("null"u8);
        }
        else if (Utf8Formatter.TryFormat(value, bytes.Slice(length), out int written))
        {
            length += written;
        }
    }

    /// <summary>Adds the members <c>notBefore</c> and <c>notAfter</c>, null where the end is open.</summary>
    internal void AddEnds(DateWindow window)
    {
        Add("\"notBefore\":"u8);
        AddDay(window.FirstDay);
        Add(",\"notAfter\":"u8);
        AddDay(window.LastDay);
    }

    /// <summary>Adds a window in EDTF as a text, <c>null</c> for any date.</summary>
    internal void AddEdtf(DateWindow window)
    {
        if (window.IsAny)
        {
            Add("null"u8);
            return;
        }

        bytes[length++] = (byte)'"';
        length += DateText.WriteEdtf(window, bytes.Slice(length));
        bytes[length++] = (byte)'"';
    }

    private void AddDay(int dayNumber)
    {
        if (dayNumber == DayNumber.Open)
        {
            Add("null"u8);
            return;
        }

        bytes[length++] = (byte)'"';
        length += DateText.WriteIso(dayNumber, bytes.Slice(length));
        bytes[length++] = (byte)'"';
    }
}
