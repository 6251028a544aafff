namespace Terminus;

/// <summary>The words that a member may hold and what each stands for, in the order in which they are listed to people.</summary>
internal sealed class Choices<T>
    where T : struct, Enum
{
    private readonly (string Word, T Value)[] choices;

    internal Choices(params (string Word, T Value)[] choices)
    {
        this.choices = choices;
        Words = choices.Select(c => c.Word).ToArray();
    }

    internal IReadOnlyList<string> Words { get; }

    /// <summary>What a word stands for, or null for a word that is not among them. Case counts.</summary>
    internal T? Find(string word)
    {
        foreach ((string known, T value) in choices)
        {
            if (string.Equals(known, word, StringComparison.Ordinal))
            {
                return value;
            }
        }

        return null;
    }

    /// <summary>The word of a value.</summary>
    internal string WordOf(T value)
    {
        foreach ((string word, T known) in choices)
        {
            if (EqualityComparer<T>.Default.Equals(known, value))
            {
                return word;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(value), value, "The value has no word.");
    }
}
