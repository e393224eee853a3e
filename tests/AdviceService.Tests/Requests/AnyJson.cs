using CsCheck;

namespace AdviceService.Tests.Requests;

/// <summary>JSON made of the names and words of the contract and of odd values, so that much of it is nearly right.</summary>
internal static class AnyJson
{
    private static readonly string[] Names =
    [
        "vehicle", "complaint", "symptoms", "symptom", "occasions", "position", "present", "unsure", "troubleCodes", "findings", "check", "value", "unit", "observation",
        "on", "odometer", "limit", "minimum", "maximum", "source", "services", "item", "workshop", "minutes", "audience", "asOf", "jurisdiction", "modelYear",
        "fuel", "engine", "cylinders", "steering", "wheelDiameter", "brakes", "front", "equipment", "sunroof", "id", "Vehicle", "a/b", "m~n", "",
    ];

    private static readonly string[] Scalars =
    [
        "null", "true", "false", "0", "-0.0", "1", "8", "8.0", "8.5", "2016", "1e3", "1e999", "-1e999", "1e-999", "99999999999999999999", "\"\"", "\"8\"",
        "\"unknown\"", "\"km\"", "\"mm\"", "\"clunk\"", "\"selecting-gear\"", "\"front-left\"", "\"rear\"", "\"brake-pad-thickness\"", "\"coolant-condition\"",
        "\"rusty\"", "\"differential-fluid\"", "\"P0301\"", "\"u0g00\"", "\"2026-03-01\"", "\"2026-02-30\"", "\"owner\"", "\"US\"", "\"diesel\"", "\"a\\u0000b\"",
        "\"\\uD83D\\uDE00\"", "\"squeal when braking, code P0420\"",
    ];

    private static readonly Gen<string> Scalar = Gen.Int[0, Scalars.Length - 1].Select(i => Scalars[i]);

    /// <summary>JSON nested at most so deep.</summary>
    /// <param name="depth">The depth.</param>
    /// <param name="repeats">Whether a member may stand twice in an object.</param>
    public static Gen<string> OfDepth(int depth, bool repeats)
    {
        if (depth == 0)
            return Scalar;
        var inner = OfDepth(depth - 1, repeats);
        var member = Gen.Select(Gen.Int[0, Names.Length - 1], inner, (name, value) => (Name: Names[name], Value: value));
        return Gen.Frequency(
            (2, Scalar),
            (1, inner.List[0, 3].Select(list => $"[{string.Join(',', list)}]")),
            (4, member.List[0, 4].Select(members => Object(repeats ? members : members.DistinctBy(one => one.Name)))));
    }

    private static string Object(IEnumerable<(string Name, string Value)> members) =>
        $"{{{string.Join(',', members.Select(member => $"\"{member.Name}\":{member.Value}"))}}}";
}
