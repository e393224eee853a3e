using Advice.Knowledge.Rules;

namespace Advice.Evidence;

/// <summary>A report that may be no fault.</summary>
public sealed record NormalReport(SeenSign Seen, NormalRule Rule);
