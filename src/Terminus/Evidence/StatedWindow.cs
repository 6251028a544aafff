namespace Terminus;

/// <summary>
/// A window with a stated confidence, the one currency of the library: "the date of manufacture lies in here with probability
/// at least this much, if I am the only witness".
/// </summary>
/// <remarks>
/// The confidence is a lower bound, so it needs no prior and does not change with the period searched. The default value is
/// any date with confidence 0, which says nothing, and is valid.
/// </remarks>
public readonly struct StatedWindow : IEquatable<StatedWindow>
{
    /// <summary>States <paramref name="window"/> with <paramref name="confidence"/>.</summary>
    /// <param name="window">The window.</param>
    /// <param name="confidence">From 0 (says nothing) to 1 (certain).</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence lies outside [0, 1] or is not a number.</exception>
    public StatedWindow(DateWindow window, double confidence)
    {
        Window = window;
        Confidence = Guard.Confidence(confidence, nameof(confidence));
    }

    /// <summary>The window.</summary>
    public DateWindow Window { get; }

    /// <summary>The confidence, from 0 (says nothing) to 1 (certain).</summary>
    public double Confidence { get; }

    /// <summary>The same window with another confidence.</summary>
    /// <param name="confidence">From 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence lies outside [0, 1] or is not a number.</exception>
    public StatedWindow WithConfidence(double confidence) => new(Window, confidence);

    /// <inheritdoc/>
    public bool Equals(StatedWindow other) => Window == other.Window && Confidence.Equals(other.Confidence);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is StatedWindow other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Window.GetHashCode() * 397) ^ Confidence.GetHashCode());

    /// <summary>Whether window and confidence are the same.</summary>
    public static bool operator ==(StatedWindow left, StatedWindow right) => left.Equals(right);

    /// <summary>Whether window or confidence differ.</summary>
    public static bool operator !=(StatedWindow left, StatedWindow right) => !left.Equals(right);

    /// <summary>Such as <c>1961-07-11/.. (0.98)</c>.</summary>
    public override string ToString()
        => Window + " (" + Confidence.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture) + ")";
}
