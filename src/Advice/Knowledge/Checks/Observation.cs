using Advice.Knowledge.Limits;

namespace Advice.Knowledge.Checks;

/// <summary>One value of a check's closed scale.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Normal">Whether it is the normal one.</param>
/// <param name="Text">It in words.</param>
/// <param name="Deficiency">Its class; null = that of the fault that shows most surely in it.</param>
public sealed record Observation(string Id, bool Normal, string Text, Deficiency? Deficiency = null);
