using Advice.Knowledge.Limits;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Where formulas and figures come from.</summary>
internal static class From
{
    public static readonly Source CommonPractice = new(Grade.CommonPractice, null, null, null);

    public static Source Primary(string document, string? place = null, string? note = null) => new(Grade.Primary, document, place, note);

    public static Source Restated(string document, string? place = null, string? note = null) => new(Grade.Secondary, document, place, note);

    public static Source Memory(string document, string? place = null, string? note = null) => new(Grade.FromMemory, document, place, note);

    public static Source Estimate(string note) => new(Grade.Judgement, null, null, note);
}
