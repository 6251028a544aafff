using System.Globalization;

namespace Terminus;

/// <summary>A place in a text, and the first thing that was wrong with it.</summary>
internal ref struct EdtfScanner(ReadOnlySpan<char> text)
{
    private readonly ReadOnlySpan<char> text = text;

    internal int Position { get; private set; }

    internal EdtfError? Error { get; private set; }

    internal readonly bool AtEnd => Position >= text.Length;

    /// <summary>The character here, or NUL at the end.</summary>
    internal readonly char Current => Position < text.Length ? text[Position] : '\0';

    internal static bool IsDigit(char c) => c is >= '0' and <= '9';

    internal void Advance() => Position++;

    /// <summary>Steps over <paramref name="expected"/> if it stands here.</summary>
    internal bool Take(char expected)
    {
        if (AtEnd || text[Position] != expected)
        {
            return false;
        }

        Position++;
        return true;
    }

    /// <summary>Steps over <c>..</c> if it stands here.</summary>
    internal bool TakeDots()
    {
        if (Position + 1 >= text.Length || text[Position] != '.' || text[Position + 1] != '.')
        {
            return false;
        }

        Position += 2;
        return true;
    }

    /// <summary>Notes what is wrong at <paramref name="position"/>, and returns false.</summary>
    internal bool Fail(int position, string reason)
    {
        Error = new EdtfError(position, reason);
        return false;
    }

    /// <summary>Notes that something else was wanted here, names what was found, and returns false.</summary>
    internal bool FailHere(string wanted) => Fail(Position, wanted + " " + Found());

    private readonly string Found()
    {
        if (AtEnd)
        {
            return "The text ends here.";
        }

        char c = text[Position];
        return c switch
        {
            ' ' => "Found a space.",
            > ' ' and <= '~' => "Found '" + c + "'.",
            _ => "Found the character U+" + ((int)c).ToString("X4", CultureInfo.InvariantCulture) + ".",
        };
    }
}
