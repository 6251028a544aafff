namespace Terminus;

/// <summary>A question of the reference file: which of the features that answer it does the part show?</summary>
/// <remarks>
/// On a piece of a day each feature has the weight that its own windows leave it: 1 while it is common, less before and after, little before it
/// was introduced. "None of these" has a steady weight. The weights are divided by their sum.
/// </remarks>
internal sealed class FeatureQuestion : OpenQuestion
{
    private readonly StatedDays windows;
    private readonly double applies;

    internal FeatureQuestion(QuestionEntry question, string? part, IReadOnlyList<FeatureEntry> features, ReferenceSet reference, Assumptions house)
        : base(question.Id, question.Text, part)
    {
        Answers = [.. features.Select(f => new OpenAnswer(f.Id, f.Name)), new OpenAnswer(null, null)];
        applies = question.Objects.Count == 0 ? GeneralQuestionApplies : 1;
        windows = new StatedDays(features.Count);
        var seen = new Piece(question.Id, features: features.Select(f => new PieceFeature(f.Id, part)));
        foreach (Evidence item in PieceEvidence.Of(seen, reference, house).Items)
        {
            item.StateInto(windows, house);
        }
    }

    /// <summary>Whether any of the answers has a date at all.</summary>
    internal bool IsDated => windows.Windows > 0;

    internal override IReadOnlyList<OpenAnswer> Answers { get; }

    internal override IEnumerable<int> Breaks
    {
        get
        {
            var breaks = new List<int>();
            for (int item = 0; item < windows.Items; item++)
            {
                foreach (StatedDay window in windows[item])
                {
                    breaks.Add(window.Low);
                    breaks.Add(window.High == int.MaxValue ? int.MinValue : window.High + 1);
                }
            }

            return breaks;
        }
    }

    internal override double[] Probabilities(int day)
    {
        double[] weights = [.. Enumerable.Range(0, windows.Items).Select(item => Weight(windows[item], day)), WeightOfNone];
        double sum = weights.Sum();
        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] *= applies / sum;
        }

        weights[weights.Length - 1] += 1 - applies;
        return weights;
    }

    internal override PieceAnswer Redate(PieceDating dating, OpenAnswer answer)
    {
        if (answer.Id is null)
        {
            return PieceAnswer.Of(dating);
        }

        Piece answered = dating.Piece with { Features = ValueList.Of(dating.Piece.Features.Append(new PieceFeature(answer.Id, Part))) };
        return PieceAnswer.Of(PieceDating.Of(answered, dating.Dating.AsOf, dating.Reference, dating.Dating.Assumptions, dating.Confidence));
    }

    // The plausibility of the day if the feature were the only witness.
    private static double Weight(ReadOnlySpan<StatedDay> nested, int day)
    {
        foreach (StatedDay window in nested)
        {
            if (day < window.Low || day > window.High)
            {
                return 1 - window.Confidence;
            }
        }

        return 1;
    }
}
