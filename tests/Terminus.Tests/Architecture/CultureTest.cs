using System.Globalization;
using System.Reflection;
using Xunit.Sdk;

namespace Terminus.Tests.Architecture;

/// <summary>Runs the examples of the core again under cultures with other calendars, digits, signs and letters.</summary>
public class CultureTest
{
    private static readonly string[] Core = ["Terminus.Tests.Dates", "Terminus.Tests.EvidenceKinds", "Terminus.Tests.Combining"];

    public static TheoryData<string> Cultures => [.. CultureScope.Hard];

    [Theory]
    [MemberData(nameof(Cultures))]
    public void Examples_OfTheCore_HoldUnderTheCulture(string culture)
    {
        int run = 0;
        using var scope = new CultureScope(culture);
        foreach (Type type in typeof(CultureTest).Assembly.GetExportedTypes().Where(t => Core.Contains(t.Namespace) && !t.IsAbstract))
        {
            foreach (MethodInfo method in type.GetMethods().Where(IsExample))
            {
                foreach (object?[] arguments in Rows(method))
                {
                    method.Invoke(Activator.CreateInstance(type), arguments);
                    run++;
                }
            }
        }

        Assert.True(run > 300, $"Only {run} examples ran.");
    }

    [Fact]
    public void CultureScope_Turkish_IsInForceInsideAndGoneOutside()
    {
        using (new CultureScope("tr-TR"))
        {
            Assert.Equal("1,5", Convert.ToString(1.5, CultureInfo.CurrentCulture));
        }

        Assert.NotEqual("tr-TR", CultureInfo.CurrentCulture.Name);
    }

    private static bool IsExample(MethodInfo method)
        => method.GetCustomAttributes<FactAttribute>().Any(a => a.GetType() == typeof(FactAttribute) || a.GetType() == typeof(TheoryAttribute));

    private static IEnumerable<object?[]> Rows(MethodInfo method)
        => method.GetParameters().Length == 0 ? [[]] : method.GetCustomAttributes<DataAttribute>().SelectMany(a => a.GetData(method));
}
