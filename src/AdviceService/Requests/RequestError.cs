namespace AdviceService.Requests;

/// <summary>One thing that is wrong with a request. No text in it repeats what the caller wrote, except names of members in the pointer.</summary>
/// <param name="Pointer">Where: a JSON Pointer (RFC 6901); "" is the whole body.</param>
/// <param name="Code">What kind of error, one of <see cref="ErrorCode"/>.</param>
/// <param name="Detail">What would be right, in a sentence.</param>
public sealed record RequestError(string Pointer, string Code, string Detail);
