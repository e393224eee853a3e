namespace Advice.Knowledge;

/// <summary>An entry that an overlay added, put in the place of one below it, or switched off.</summary>
/// <param name="Overlay">Name of the overlay.</param>
/// <param name="Kind">What it is: rule, fault, check, limit, service item, caution, …</param>
/// <param name="Id">Its id.</param>
/// <param name="SwitchedOff">Why it is switched off; null where it is added or replaced.</param>
public sealed record OverlayEntry(string Overlay, string Kind, string Id, string? SwitchedOff = null);
