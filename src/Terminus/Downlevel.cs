// What the compiler needs to build current C# for netstandard2.0, and nothing else: no package, no behaviour.
#if NETSTANDARD2_0
namespace System
{
    internal readonly struct Index(int value, bool fromEnd = false)
    {
        public int GetOffset(int length) => fromEnd ? length - value : value;

        public static implicit operator Index(int value) => new(value);
    }

    internal readonly struct Range(Index start, Index end)
    {
        public Index Start { get; } = start;

        public Index End { get; } = end;
    }
}

namespace System.Runtime.CompilerServices
{
    internal static class IsExternalInit;

    [AttributeUsage(AttributeTargets.All)]
    internal sealed class RequiredMemberAttribute : Attribute;

    [AttributeUsage(AttributeTargets.All, AllowMultiple = true)]
    internal sealed class CompilerFeatureRequiredAttribute(string featureName) : Attribute
    {
        public string FeatureName { get; } = featureName;
    }
}

namespace System.Diagnostics.CodeAnalysis
{
    [AttributeUsage(AttributeTargets.Parameter)]
    internal sealed class NotNullWhenAttribute(bool returnValue) : Attribute
    {
        public bool ReturnValue { get; } = returnValue;
    }

    [AttributeUsage(AttributeTargets.Parameter)]
    internal sealed class NotNullAttribute : Attribute;

    [AttributeUsage(AttributeTargets.Method)]
    internal sealed class DoesNotReturnAttribute : Attribute;
}
#endif
