namespace Terminus;

/// <summary>Where an entry stands in a piece document. Its text is made only when there is something to say of it.</summary>
internal readonly struct EntryPath(string member, int index)
{
    /// <summary>The path of something in the entry.</summary>
    public static string operator +(EntryPath entry, string rest) => entry.ToString() + rest;

    /// <summary>Such as <c>$.marks[0]</c>.</summary>
    public override string ToString() => "$" + member + "[" + DateText.Digits(index) + "]";
}
