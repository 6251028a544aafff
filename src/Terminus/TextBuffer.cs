namespace Terminus;

/// <summary>
/// Characters that are added one after another and used again, so that words can be put together without a string for each step.
/// Not for two threads at once.
/// </summary>
internal sealed class TextBuffer
{
    private const int UsualLength = 256;

    private char[] characters;

    internal TextBuffer(int capacity = UsualLength) => characters = new char[capacity];

    internal int Length { get; private set; }

    internal ReadOnlySpan<char> Span => characters.AsSpan(0, Length);

    internal void Clear() => Length = 0;

    internal TextBuffer Add(char character)
    {
        Reserve(1);
        characters[Length++] = character;
        return this;
    }

    internal TextBuffer Add(string? text) => Add(text.AsSpan());

    internal TextBuffer Add(ReadOnlySpan<char> text)
    {
        Reserve(text.Length);
        text.CopyTo(characters.AsSpan(Length));
        Length += text.Length;
        return this;
    }

    /// <summary>Adds a whole number in plain digits.</summary>
    internal TextBuffer AddDigits(int number) => number < 0 ? Add('-').AddFixedPoint(-(long)number, 0) : AddFixedPoint(number, 0);

    /// <summary>Adds a number that is not negative, given in units of its last decimal.</summary>
    internal TextBuffer AddFixedPoint(long units, int decimals)
    {
        Span<byte> digits = stackalloc byte[FixedPoint.Longest];
        int length = FixedPoint.Write(units, decimals, digits);
        Reserve(length);
        Ascii.Read(digits.Slice(0, length), characters.AsSpan(Length));
        Length += length;
        return this;
    }

    /// <summary>Makes the character at a place a capital.</summary>
    internal void Capitalise(int index)
    {
        if (index < Length)
        {
            characters[index] = char.ToUpperInvariant(characters[index]);
        }
    }

    public override string ToString() => Span.ToString();

    private void Reserve(int count)
    {
        if (characters.Length - Length < count)
        {
            Array.Resize(ref characters, Math.Max(2 * characters.Length, Length + count));
        }
    }
}
