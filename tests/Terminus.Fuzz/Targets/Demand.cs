using System.Text.Json;

namespace Terminus.Fuzz.Targets;

/// <summary>What must hold, or else.</summary>
internal static class Demand
{
    /// <summary>Something holds.</summary>
    /// <exception cref="BrokenLawException">It does not.</exception>
    internal static void That(bool holds, string law)
    {
        if (!holds)
        {
            throw new BrokenLawException(law);
        }
    }

    /// <summary>A text is JSON, whole and valid.</summary>
    internal static void Json(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
        }
        catch (JsonException wrong)
        {
            throw new BrokenLawException("What is written is JSON: " + wrong.Message);
        }
    }

    /// <summary>A text is JSON on one line.</summary>
    internal static void JsonLine(string text)
    {
        That(!text.Contains('\n', StringComparison.Ordinal) && !text.Contains('\r', StringComparison.Ordinal), "An answer stands on one line.");
        Json(text);
    }

    /// <summary>Windows are nested, widest first, with confidences from 0 to 1 that never rise.</summary>
    internal static void Nested(IReadOnlyList<StatedWindow> windows)
    {
        for (int i = 0; i < windows.Count; i++)
        {
            That(windows[i].Confidence is >= 0 and <= 1, "A confidence lies from 0 to 1.");
            That(i == 0 || windows[i - 1].Window.Contains(windows[i].Window), "Each window lies in the one before it.");
            That(i == 0 || windows[i - 1].Confidence >= windows[i].Confidence, "Confidences never rise.");
        }
    }

    /// <summary>Every reason has its English.</summary>
    internal static void Worded(IEnumerable<Reason> reasons)
    {
        foreach (Reason reason in reasons)
        {
            That(ReasonText.Of(reason).Length > 0, "Every reason has words.");
        }
    }
}
