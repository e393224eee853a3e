using Advice.Knowledge.Words;

namespace Advice.Knowledge.Codes;

/// <summary>What the first characters of a trouble code say, whether or not the code is known.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Starts">The characters that the codes begin with.</param>
/// <param name="Name">What they are about.</param>
/// <param name="Scope">Who defines them; null = the shorter beginning says.</param>
/// <param name="Caveat">What such a code does not prove; null = the shorter beginning says.</param>
public sealed record CodeFamily(string Id, string Starts, Text Name, CodeScope? Scope, Text? Caveat);
