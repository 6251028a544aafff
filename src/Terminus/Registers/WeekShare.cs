namespace Terminus;

/// <summary>The confidence of the window that reaches so many weeks to either side of the estimated issue day.</summary>
internal readonly struct WeekShare(int weeks, double confidence)
{
    internal int Weeks { get; } = weeks;

    internal double Confidence { get; } = confidence;
}
