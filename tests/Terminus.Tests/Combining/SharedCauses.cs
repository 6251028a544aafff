namespace Terminus.Tests.Combining;

/// <summary>Pieces whose items share a cause: what stands or falls together is drawn once, then noted several times.</summary>
internal sealed class SharedCauses(SplitMix64 random)
{
    private readonly Simulation simulation = new(random, Erring.AsStated);

    /// <summary>Three patents on one die, up to eight years apart. The newest governs: the die is right or wrong, not each line of it.</summary>
    internal SimulatedPiece PatentsOnOneDie(bool merged)
    {
        int trueDay = simulation.TrueDay();
        var newest = (PatentIssued)simulation.Witness(day => On(day), trueDay);
        int second = newest.Issued.Outer.Low - SimulatedEvidence.Years(random, 0, 8);
        int first = second - SimulatedEvidence.Years(random, 0, 8);
        Evidence[] all = [On(first), On(second), newest];
        return new SimulatedPiece(trueDay, Dating.Of(merged ? OneCause.Merge(ValueList.Of<Evidence>(all), ReferenceSet.Empty, Assumptions.House) : all, Simulation.AsOf));

        static PatentIssued On(int day) => new(EvidenceDate.In(DateWindow.OfDays(day, day)), termYears: 17, part: "back");
    }

    /// <summary>Eight advertisements of one model from a run of two to eight years; not merged where each was noted as a model of its own.</summary>
    internal SimulatedPiece AdvertsOfOneModel(bool merged) => AdvertsOfOneModel(merged, SimulatedEvidence.Years(random, 2, 8));

    /// <summary>Eight advertisements of one model, the last a run of days after the first.</summary>
    internal SimulatedPiece AdvertsOfOneModel(bool merged, int run)
    {
        int trueDay = simulation.TrueDay();
        var model = (ModelAdvertised)simulation.Witness(
            day => new ModelAdvertised(EvidenceDate.In(DateWindow.OfDays(day, day)), EvidenceDate.In(DateWindow.OfDays(day + run, day + run))), trueDay);
        int first = model.First.Outer.Low;
        int[] days = [first, first + run, .. Enumerable.Range(0, 6).Select(_ => first + random.NextInt(run + 1))];
        var piece = new Piece("invented", adverts: days.Select(
            (day, i) => new PieceAdvert(EdtfDate.From(DayNumber.ToDate(day)), model: merged ? "model" : "model " + DateText.Digits(i))));
        return new SimulatedPiece(trueDay, PieceDating.Of(piece, Simulation.AsOf, ReferenceSet.Empty).Dating);
    }

    /// <summary>Three features of one fashion, each in its own entry: common for the same years within two, and in the fashion or out of it together.</summary>
    internal SimulatedPiece FeaturesOfOneFashion(bool merged)
    {
        int trueDay = simulation.TrueDay();
        int common = SimulatedEvidence.Years(random, 5, 25);
        var fashion = (FeatureSeen)simulation.Witness(day => Common(day, 0, "fashion"), trueDay);
        int start = fashion.Common!.Outer.Low;
        Evidence[] all = [fashion, .. Enumerable.Range(1, 2).Select(i => Common(start, SimulatedEvidence.Years(random, -2, 2), "feature " + DateText.Digits(i)))];
        return new SimulatedPiece(trueDay, Dating.Of(merged ? all[..1] : all, Simulation.AsOf));

        FeatureSeen Common(int day, int apart, string feature) => new(
            feature, common: EvidenceDate.In(DateWindow.OfDays(day + apart, day + apart)), fading: EvidenceDate.In(DateWindow.OfDays(day + apart + common, day + apart + common)));
    }
}
