#:package Terminus@0.1.0
using NodaTime;
using Terminus;

// %% [markdown]
// # From dated adverts to a feature window
//
// Adverts say when a feature was about, and not when it came in. From independent sources the library bounds the day on which it came in, with a
// stated confidence. The feature and its adverts are invented.

// %%
Sighting[] adverts =
[
    new(DateWindow.On(new LocalDate(1931, 3, 1)), "quay trade list, March 1931"),
    new(DateWindow.On(new LocalDate(1932, 9, 1)), "autumn sheet of a chandler, 1932"),
    new(DateWindow.On(new LocalDate(1934, 1, 1)), "new year's catalogue, 1934"),
    new(DateWindow.On(new LocalDate(1935, 8, 1)), "regatta programme, 1935"),
    new(DateWindow.On(new LocalDate(1936, 12, 1)), "winter catalogue, 1936"),
];
SightingEstimate estimate = SightingEstimate.Of(adverts, SightingEnd.First, SightingMethod.Abrupt, confidence: 0.9);
Console.WriteLine($"came in on or after {EdtfDate.From(estimate.Bound!.Value)}, at 0.9");
// show estimate

// %% [markdown]
// The adverts go, as they are, into a reference file of one's own, in a layer over the built-in one, and date a piece that has the feature. The day
// is estimated anew when an advert is added. An estimate counts as usage of the trade (0.85) whatever the basis, so with a dated photograph (0.99)
// the start holds at 0.8 and not at 0.9.

// %%
var feature = new FeatureEntry("own.spring_tongue", "spring tongue", basis: EvidenceBasis.Event, grade: EvidenceGrade.High,
    sightings: adverts, origin: ReferenceOrigin.Invented).WithEstimate(EstimatedEnds.Introduced);
ReferenceSet reference = ReferenceSet.BuiltIn.With(new ReferenceFile("own", "1", features: [feature]));
var piece = new Piece("P-7", "buckle with a spring tongue", features: [new PieceFeature("own.spring_tongue")],
    records: [new PieceRecord(EdtfDate.Parse("1940-05"), "photograph")]);
PieceDating dating = PieceDating.Of(piece, new LocalDate(2026, 11, 25), reference, confidence: 0.8);
Console.WriteLine($"made {dating.Interval?.ToEdtf()}, at 0.8");
Console.WriteLine($"made {dating.Dating.Interval(0.9)?.ToEdtf()}, at 0.9");
// show dating
