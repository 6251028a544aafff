namespace Terminus;

/// <summary>The kinds of entry that a reference file has. An id is unique within its kind.</summary>
public enum ReferenceKind
{
    /// <summary>A feature of construction, material or subject: <see cref="FeatureEntry"/>.</summary>
    Feature,

    /// <summary>A question whose answers are features: <see cref="QuestionEntry"/>.</summary>
    Question,

    /// <summary>A patent or registered design: <see cref="PatentEntry"/>.</summary>
    Patent,

    /// <summary>A maker: <see cref="MakerEntry"/>.</summary>
    Maker,

    /// <summary>A dated advert or catalogue page: <see cref="AdvertEntry"/>.</summary>
    Advert,

    /// <summary>A wording that law or custom confines: <see cref="MarkEntry"/>.</summary>
    Mark,
}
