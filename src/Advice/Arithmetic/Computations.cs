using System.Collections.Frozen;
using Advice.Arithmetic.Catalogue;

namespace Advice.Arithmetic;

/// <summary>All workshop arithmetic.</summary>
public static class Computations
{
    /// <summary>Every computation, by name.</summary>
    public static IReadOnlyList<Computation> All { get; } =
    [
        .. BatteryComputations.All.Concat(CoolantComputations.All).Concat(OilComputations.All).Concat(BrakeComputations.All)
            .Concat(ChassisComputations.All).Concat(EngineComputations.All).Concat(TyreComputations.All).Concat(OperatorComputations.All)
            .OrderBy(computation => computation.Name, StringComparer.Ordinal),
    ];

    private static readonly FrozenDictionary<string, Computation> ByName = All.ToFrozenDictionary(computation => computation.Name);

    /// <summary>The computation of that name; null where there is none.</summary>
    public static Computation? Find(string name) => ByName.GetValueOrDefault(name);
}
