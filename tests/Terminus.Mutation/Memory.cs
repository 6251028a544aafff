using System.Reflection;

namespace Terminus.Mutation;

/// <summary>What the library keeps between calls to save work. Each test starts without it, or it would be spared the code that a mutant is in.</summary>
internal sealed class Memory
{
    private const BindingFlags Any = BindingFlags.Static | BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;

    private readonly List<Action> forgetting = [];

    public Memory(Assembly library)
    {
        foreach (FieldInfo field in library.GetTypes().Where(type => !type.ContainsGenericParameters).SelectMany(type => type.GetFields(Any)).Where(field => field.IsStatic))
        {
            if (field.FieldType.Name.StartsWith("TextsReadBefore", StringComparison.Ordinal))
            {
                var entries = (Array)field.FieldType.GetField("entries", Any)!.GetValue(field.GetValue(null))!;
                forgetting.Add(() => Array.Clear(entries));
            }
            else if (field.FieldType.Name.StartsWith("ConditionalWeakTable", StringComparison.Ordinal))
            {
                object table = field.GetValue(null)!;
                forgetting.Add(() => field.FieldType.GetMethod("Clear")!.Invoke(table, null));
            }
        }
    }

    public void Forget() => forgetting.ForEach(forget => forget());
}
