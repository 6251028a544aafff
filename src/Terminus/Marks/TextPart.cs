namespace Terminus;

/// <summary>A piece of an inscription that no mark claims.</summary>
public sealed record TextPart
{
    internal TextPart(int start, string text)
    {
        Start = start;
        Text = text;
    }

    /// <summary>The position of the first character in the inscription.</summary>
    public int Start { get; }

    /// <summary>The characters.</summary>
    public string Text { get; }

    /// <summary>Whether there is a letter or a digit in it; otherwise it is what stands between marks.</summary>
    public bool HasWords => Text.Any(char.IsLetterOrDigit);

    /// <summary>The characters.</summary>
    public override string ToString() => Text;
}
