using System.Globalization;

namespace Terminus.Tests;

/// <summary>Runs what it encloses under another culture, on this thread.</summary>
internal sealed class CultureScope : IDisposable
{
    private readonly CultureInfo culture = CultureInfo.CurrentCulture;
    private readonly CultureInfo uiCulture = CultureInfo.CurrentUICulture;

    internal CultureScope(string name)
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
        CultureInfo.CurrentUICulture = CultureInfo.CurrentCulture;
    }

    /// <summary>Cultures with another decimal point, another calendar, another minus sign, or another lower-case i.</summary>
    internal static IReadOnlyList<string> Hard { get; } = ["tr-TR", "ar-SA", "th-TH", "fa-IR"];

    public void Dispose()
    {
        CultureInfo.CurrentCulture = culture;
        CultureInfo.CurrentUICulture = uiCulture;
    }
}
