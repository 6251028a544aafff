namespace Terminus.Tests.Marks;

public class MarkReasonsTest
{
    [Fact]
    public void Reasons_OfEveryRow_HaveEnglishWithNothingLeftOpen()
    {
        IEnumerable<Mark> marks = MarkRow.All.SelectMany(r => Inscription.Read(r.Text).Marks).SelectMany(m => m.Alternatives.Prepend(m));
        foreach (Reason reason in marks.SelectMany(m => m.Reasons))
        {
            string text = ReasonText.Of(reason);
            Assert.EndsWith(".", text, StringComparison.Ordinal);
            Assert.DoesNotContain("{", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Wordings_EachHasAnIdAndAPeriodInOrder()
    {
        foreach (Wording wording in Lexicon.BuiltIn.Wordings)
        {
            Assert.StartsWith("mk.", wording.Id, StringComparison.Ordinal);
            Assert.True(wording.IsRecalled || wording.Source.Length > 0, wording.Id + " has neither a source nor says that it is recalled.");
        }
    }
}
