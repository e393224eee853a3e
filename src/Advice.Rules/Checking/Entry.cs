using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>One entry of a rule file, with its id (empty where it has none).</summary>
internal readonly record struct Entry(string Id, MappingNode Node);
