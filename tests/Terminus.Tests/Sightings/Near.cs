namespace Terminus.Tests.Sightings;

/// <summary>Comparing with printed figures.</summary>
internal static class Near
{
    /// <summary>Within a share of the expected value, which was printed to so many digits.</summary>
    internal static void Relative(double expected, double actual, double share)
        => Assert.InRange(actual, expected - (Math.Abs(expected) * share), expected + (Math.Abs(expected) * share));

    internal static void Absolute(double expected, double actual, double tolerance)
        => Assert.InRange(actual, expected - tolerance, expected + tolerance);
}
