namespace Terminus.Demo;

/// <summary>A number with its noun.</summary>
internal static class Counted
{
    /// <summary>Such as <c>1 entry</c> or <c>2 entries</c>; where no plural is given it ends in s.</summary>
    internal static string Of(int count, string one, string? many = null)
        => FormattableString.Invariant($"{count} {(count == 1 ? one : many ?? one + "s")}");
}
