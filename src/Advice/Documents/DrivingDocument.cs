using Advice.Knowledge;

namespace Advice.Documents;

/// <summary>Whether it may be driven, and why.</summary>
public sealed record DrivingDocument(DrivingAdvice Advice, IReadOnlyList<ReasonDocument> Because);
