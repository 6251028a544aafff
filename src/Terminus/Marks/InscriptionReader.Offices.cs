namespace Terminus;

/// <content>The office of words that do not name one.</content>
internal sealed partial class InscriptionReader
{
    private static readonly Reason OfficeAssumed = new("marks.office-assumed");

    /// <summary>
    /// English words without a country are taken for American ones, unless the thing says that it comes from elsewhere and gives
    /// neither a date nor a number.
    /// </summary>
    private void AssumeOffices()
    {
        string? origin = Origin();
        foreach (MarkDraft draft in drafts)
        {
            if (!draft.IsOfficeAssumed)
            {
                continue;
            }

            if (origin is null or "US")
            {
                draft.Because(OfficeAssumed);
            }
            else if (draft is { Date: null, Number: null })
            {
                draft.Office = null;
                draft.IsOfficeAssumed = false;
                draft.Right = null;
                draft.Because(new Reason("marks.office-open", "origin", origin));
            }
            else if (draft is { Number: not null, Right: "utility" })
            {
                // A maker at home in an English-speaking country means the office there; any other may mean that of the market.
                bool home = origin is "GB" or "CA" or "AU";
                draft.Office = home ? origin : draft.Office;
                draft.OtherOffice = home ? "US" : origin;
                draft.Right = home ? "patent" : draft.Right;
                draft.Because(new Reason("marks.office-of-origin", "origin", origin, "taken", draft.Office!));
            }
            else
            {
                draft.Because(OfficeAssumed);
            }
        }
    }

    private string? Origin()
    {
        foreach (MarkDraft draft in drafts)
        {
            if (draft is { Kind: MarkKind.Origin, Office: { } office })
            {
                return office;
            }
        }

        return null;
    }
}
