namespace Terminus;

/// <summary>What a right is called in a sentence.</summary>
internal static class RightName
{
    /// <summary>The words of a right: <c>utility patent</c>, <c>registered design</c>.</summary>
    internal static string Words(string right) => right is "utility" or "design" or "plant" or "reissue" ? right + " patent" : right.Replace('-', ' ');

    /// <summary>A right with its office and number, as far as they are known: <c>US utility patent 2345678</c>.</summary>
    internal static string Of(string? office, string? right, string? number)
        => string.Join(" ", new[] { office, right is null ? null : Words(right), number }.OfType<string>());
}
