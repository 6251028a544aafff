using System.Collections;
using System.Reflection;

namespace Terminus.Tests;

/// <summary>
/// Reads every public getter and calls every public method of a value of the library, and of what it gives back, with arguments
/// from a pool of valid values. A member that throws fails the test that walks.
/// </summary>
/// <remarks>Methods that take a text or an index are left to tests of their own: not every text or index is valid.</remarks>
internal sealed class PublicWalk
{
    private const BindingFlags Instance = BindingFlags.Public | BindingFlags.Instance;
    private const BindingFlags Static = BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private readonly List<object> pool;
    private readonly HashSet<object> visited = [];

    internal PublicWalk(IEnumerable<object?> pool) => this.pool = [.. pool.OfType<object>()];

    /// <summary>The types of the library that the walk came by.</summary>
    internal HashSet<Type> Seen { get; } = [];

    internal void Visit(object? value)
    {
        if (value is IEnumerable many and not string)
        {
            foreach (object? one in many)
            {
                Visit(one);
            }

            return;
        }

        if (value is null or Enum || value.GetType().Assembly != typeof(Dating).Assembly || !value.GetType().IsVisible || !visited.Add(value))
        {
            return;
        }

        Type type = value.GetType();
        Seen.Add(type);
        foreach (PropertyInfo property in type.GetProperties(Instance).Where(p => p.GetIndexParameters().Length == 0))
        {
            Visit(Read(property, () => property.GetValue(value)));
        }

        foreach (MethodInfo method in type.GetMethods(Instance).Where(m => m is { IsSpecialName: false, IsGenericMethod: false }))
        {
            Call(method, value);
        }
    }

    /// <summary>Reads and calls the static members of a type.</summary>
    internal void VisitStatic(Type type)
    {
        foreach (MethodInfo method in type.GetMethods(Static).Where(m => !m.IsGenericMethod))
        {
            Call(method, null);
        }
    }

    // Results are visited one deep only where they are new, so the walk ends: the library's values are finite and compare by content.
    private void Call(MethodInfo method, object? on)
    {
        object?[]? arguments = [.. method.GetParameters().Select(Argument)];
        bool callable = method.GetParameters().Zip(arguments, (p, a) => a is not null || IsNullable(p)).All(possible => possible);
        if (callable)
        {
            object? result = Read(method, () => method.Invoke(on, arguments));
            if (visited.Count < 400)
            {
                Visit(result);
            }
        }
    }

    private object? Argument(ParameterInfo parameter)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return type == typeof(object) ? pool[0] : pool.FirstOrDefault(type.IsInstanceOfType);
    }

    private static bool IsNullable(ParameterInfo parameter)
        => !parameter.ParameterType.IsByRef && new NullabilityInfoContext().Create(parameter).WriteState == NullabilityState.Nullable;

    private static object? Read(MemberInfo member, Func<object?> read)
    {
        try
        {
            return read();
        }
        catch (TargetInvocationException error)
        {
            throw new InvalidOperationException($"{member.DeclaringType!.Name}.{member.Name} throws.", error.InnerException);
        }
    }
}
