namespace Advice.Knowledge;

/// <summary>An entry that an overlay added or put in the place of a shipped one.</summary>
/// <param name="Overlay">Name of the overlay.</param>
/// <param name="Kind">What it is: rule, fault, check, limit, service item, caution, …</param>
/// <param name="Id">Its id.</param>
public sealed record OverlayEntry(string Overlay, string Kind, string Id);
