namespace Terminus;

/// <summary>The id of a patent: office, right and number, as one text and in its three parts.</summary>
internal readonly record struct PatentId(string Office, string Right, string Number)
{
    internal const string Wanted =
        "The id of a patent is an office of two capital letters, a right and a number without separators, such as \"US utility 2999999\".";

    /// <summary>Reads <c>US utility 2999999</c>; false for any other form.</summary>
    internal static bool TryParse(string? id, out PatentId parsed)
    {
        string[] words = (id ?? "").Split(' ');
        bool isId = words.Length == 3
            && words[0].Length == 2 && words[0].All(c => c is >= 'A' and <= 'Z')
            && words[1].Length > 0 && words[1].All(c => c is >= 'a' and <= 'z' or '-')
            && words[2].Length > 0 && words[2].All(c => c is >= '0' and <= '9' or >= 'A' and <= 'Z' or '/');
        parsed = isId ? new PatentId(words[0], words[1], words[2]) : default;
        return isId;
    }

    /// <summary>Such as <c>US utility 2999999</c>.</summary>
    public override string ToString() => Office + " " + Right + " " + Number;
}
