namespace Terminus;

/// <summary>The words that the grammar itself knows by name; their forms stand in <c>data/marks/words.csv</c>.</summary>
internal static class Term
{
    internal const string Patent = "PATENT";
    internal const string Pending = "PENDING";
    internal const string Applied = "APPLIED";
    internal const string For = "FOR";
    internal const string Design = "DESIGN";
    internal const string Reissue = "REISSUE";
    internal const string Plant = "PLANT";
    internal const string Utility = "UTILITY";
    internal const string No = "NO";
    internal const string And = "AND";
    internal const string Also = "ALSO";
    internal const string Other = "OTHER";
    internal const string Letters = "LETTERS";
    internal const string Royal = "ROYAL";
    internal const string Provisional = "PROVISIONAL";
    internal const string Foreign = "FOREIGN";
    internal const string Dated = "DATED";
    internal const string Office = "OFFICE";
    internal const string Reg = "REG";
    internal const string Since = "SINCE";
    internal const string Established = "ESTABLISHED";
    internal const string Given = "GIVEN";
    internal const string Made = "MADE";
    internal const string In = "IN";
    internal const string By = "BY";
    internal const string Of = "OF";
    internal const string Karat = "K";
    internal const string Us = "US";
    internal const string United = "UNITED";
    internal const string Great = "GREAT";
}
