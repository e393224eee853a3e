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
}
