using Advice.Knowledge.Words;

namespace Advice.Knowledge.Codes;

/// <summary>What the failure type byte of a trouble code says: how the circuit or part failed that the code is about (SAE J2012, ISO 15031-6).</summary>
/// <param name="Id">Its id.</param>
/// <param name="Starts">One hexadecimal digit for the group, or both of the byte.</param>
/// <param name="Name">How it failed.</param>
public sealed record FailureType(string Id, string Starts, Text Name);
