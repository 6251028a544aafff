namespace Terminus.Fuzz.Targets;

/// <summary>An office, a right and a number, parted by spaces: an outcome with its windows, never an exception.</summary>
internal sealed class NumberTarget() : FuzzTarget<NumberReading>(new AllocationLimits(32 * 1024, 64))
{
    protected override NumberReading Answer(byte[] input)
    {
        string[] words = FuzzText.Of(input).Split(' ', 3);
        return RegisterSet.BuiltIn.Read(words[0], words.Length > 1 ? words[1] : "", words.Length > 2 ? words[2] : "");
    }

    protected override void Judge(NumberReading answer)
    {
        Demand.Nested(answer.Windows);
        Demand.Worded(answer.Reasons);
        Demand.That(answer.Outcome is NumberOutcome.Found or NumberOutcome.Several || answer.Reasons.Count > 0, "A number without a date says why.");
        Demand.That(answer.Best is not { } best || answer.Outer.Contains(best), "The likeliest span lies in the widest window.");
        Demand.That(answer.Alternatives.All(answer.Outer.Contains), "Each span lies in the widest window.");
        Demand.That(answer.DocumentIds.All(id => id.Length > 0), "A document's identifier says something.");
    }
}
