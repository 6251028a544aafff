using System.Reflection;
using Mono.Cecil;
using Mono.Cecil.Cil;
using MethodBody = Mono.Cecil.Cil.MethodBody;

namespace Terminus.Mutation;

/// <summary>The switch that Stryker wrote into the mutated library: which mutant acts, and which were reached.</summary>
internal sealed class MutantSwitch
{
    private const int None = -1;
    private const int Room = 1 << 16;

    private readonly FieldInfo active;
    private readonly byte[] reached;

    public MutantSwitch(Assembly library)
    {
        Type control = library.GetTypes().Single(type => type.Name == "MutantControl");
        active = control.GetField("ActiveMutant")!;
        reached = (byte[])control.GetField("Reached")!.GetValue(null)!;
    }

    public void Turn(int? mutant) => active.SetValue(null, mutant ?? None);

    /// <summary>The mutants reached since it was last asked.</summary>
    public HashSet<int> TakeReached()
    {
        HashSet<int> taken = [.. Enumerable.Range(0, Room).Where(id => reached[id] != 0)];
        Array.Clear(reached);
        return taken;
    }

    /// <summary>
    /// Rewrites the question that every mutant asks, so that it notes the mutant in a table and compares one number. Stryker's own, which
    /// searches a list under a lock, makes the suite many times slower.
    /// </summary>
    public static void Quicken(string library)
    {
        using AssemblyDefinition assembly = AssemblyDefinition.ReadAssembly(new MemoryStream(File.ReadAllBytes(library)));
        TypeDefinition control = assembly.MainModule.GetTypes().Single(type => type.Name == "MutantControl");
        if (control.Fields.Any(field => field.Name == "Reached"))
        {
            return;
        }

        TypeSystem types = assembly.MainModule.TypeSystem;
        FieldDefinition reached = new("Reached", Mono.Cecil.FieldAttributes.Public | Mono.Cecil.FieldAttributes.Static, new ArrayType(types.Byte));
        control.Fields.Add(reached);
        Prepend(control.Methods.Single(method => method.Name == ".cctor").Body, reached, types);
        Rewrite(control.Methods.Single(method => method.Name == "IsActive").Body, reached, control.Fields.Single(field => field.Name == "ActiveMutant"));
        assembly.Write(library);
    }

    private static void Prepend(MethodBody body, FieldDefinition reached, TypeSystem types)
    {
        Instruction first = body.Instructions[0];
        ILProcessor code = body.GetILProcessor();
        code.InsertBefore(first, code.Create(OpCodes.Ldc_I4, Room));
        code.InsertBefore(first, code.Create(OpCodes.Newarr, types.Byte));
        code.InsertBefore(first, code.Create(OpCodes.Stsfld, reached));
    }

    private static void Rewrite(MethodBody body, FieldDefinition reached, FieldDefinition active)
    {
        body.Instructions.Clear();
        body.ExceptionHandlers.Clear();
        body.Variables.Clear();
        ILProcessor code = body.GetILProcessor();
        code.Emit(OpCodes.Ldsfld, reached);
        code.Emit(OpCodes.Ldarg_0);
        code.Emit(OpCodes.Ldc_I4_1);
        code.Emit(OpCodes.Stelem_I1);
        code.Emit(OpCodes.Ldarg_0);
        code.Emit(OpCodes.Ldsfld, active);
        code.Emit(OpCodes.Ceq);
        code.Emit(OpCodes.Ret);
    }
}
