namespace Terminus;

/// <summary>A number as it is stamped, without its commas, points and spaces.</summary>
/// <param name="Digits">The digits, with <c>?</c> for a lost one and <c>*</c> for several.</param>
/// <param name="Year">The year that belongs to it, as in <c>10811/97</c>, with two or four digits; or null.</param>
/// <param name="Right">The right that a letter before it names (<c>design</c>, <c>reissue</c>), or null.</param>
/// <param name="IsGrouped">Whether it is written in groups of three.</param>
/// <param name="Doubtful">Whether characters were put right.</param>
internal sealed record StampedNumber(string Digits, string? Year, string? Right, bool IsGrouped, bool Doubtful)
{
    /// <summary>Whether the digits alone can be a year of patents.</summary>
    internal bool LooksLikeYear => Digits.Length == 4 && !IsGrouped && Year is null && Right is null
        && (Digits[0] == '1' ? Digits[1] is '7' or '8' or '9' or '?' : Digits[0] == '2' && Digits[1] == '0' && Digits[2] is '0' or '1' or '2');
}
