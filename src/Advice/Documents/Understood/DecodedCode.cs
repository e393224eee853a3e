using Advice.Knowledge.Codes;

namespace Advice.Documents.Understood;

/// <summary>A trouble code taken apart.</summary>
/// <param name="Code">The code.</param>
/// <param name="Group">What its letter stands for.</param>
/// <param name="Scope">Who says what it means.</param>
/// <param name="Family">What its first digits stand for; null where only the maker knows.</param>
/// <param name="Known">Whether the rule set knows its meaning.</param>
/// <param name="Meaning">Its meaning; null where it is not known.</param>
/// <param name="PointsTo">Faults of this vehicle that set it, the likeliest first.</param>
/// <param name="DoesNotProve">What it does not prove.</param>
/// <param name="FailureType">Its failure type, if it was given with one.</param>
public sealed record DecodedCode(
    string Code, string Group, CodeScope Scope, string? Family, bool Known, string? Meaning, IReadOnlyList<CodeCause> PointsTo, string? DoesNotProve,
    CodeFailureType? FailureType);
