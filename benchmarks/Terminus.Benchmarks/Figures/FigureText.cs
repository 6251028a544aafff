using System.Globalization;

namespace Terminus.Benchmarks.Figures;

/// <summary>Figures in words: three digits, the unit that suits, and a dash for what was not measured.</summary>
internal static class FigureText
{
    internal const string NotMeasured = "–";

    /// <summary>Nanoseconds as a time.</summary>
    internal static string Time(double nanoseconds) => nanoseconds switch
    {
        double.NaN => NotMeasured,
        >= 1e9 => Digits(nanoseconds / 1e9) + " s",
        >= 1e6 => Digits(nanoseconds / 1e6) + " ms",
        >= 1e3 => Digits(nanoseconds / 1e3) + " µs",
        _ => Digits(nanoseconds) + " ns",
    };

    internal static string Seconds(double seconds) => Time(seconds * 1e9);

    internal static string Megabytes(double megabytes) => Whole(megabytes, " MB");

    internal static string Bytes(double bytes) => Whole(bytes, " B");

    internal static string Whole(double value, string unit = "")
        => double.IsNaN(value) ? NotMeasured : value.ToString("N0", CultureInfo.InvariantCulture) + unit;

    internal static string Times(double ratio) => double.IsNaN(ratio) ? NotMeasured : Digits(ratio);

    /// <summary>A small difference with its sign.</summary>
    internal static string Error(double error)
        => double.IsNaN(error) ? NotMeasured
            : Math.Abs(error) < 1e-12 ? "under 1e-12"
            : error.ToString("+0.0000;-0.0000", CultureInfo.InvariantCulture);

    /// <summary>Three digits, or all before the point.</summary>
    private static string Digits(double value) => value.ToString(
        value >= 100 ? "N0" : value >= 10 ? "0.0" : "0.00", CultureInfo.InvariantCulture);
}
