namespace Advice.Documents.Understood;

/// <summary>A value of the freeze frame that counts for nothing.</summary>
/// <param name="Member">Name of the member.</param>
/// <param name="Because">Why.</param>
public sealed record FrameMemberLeft(string Member, string Because);
