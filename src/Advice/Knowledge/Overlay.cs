namespace Advice.Knowledge;

/// <summary>Rules that a workshop or fleet lays over the shipped set.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Revision">Hash of its files.</param>
public sealed record Overlay(string Name, string Title, string Revision);
