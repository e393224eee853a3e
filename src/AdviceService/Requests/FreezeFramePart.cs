using Advice.Arithmetic;
using Advice.FreezeFrames;

namespace AdviceService.Requests;

/// <summary>Reads the values that the engine control stored with a trouble code.</summary>
internal static class FreezeFramePart
{
    /// <summary>Reads them.</summary>
    public static Given Read(ObjectReader frame)
    {
        var values = new Dictionary<Input, object>();
        foreach (var member in FrameInputs.All)
        {
            if (frame.Take(member.Name) is { } value && InputValue.Read(value, member) is { } read)
                values[member] = read;
        }

        if (frame.IsEmpty)
            frame.Errors.BadShape(frame.At, ErrorCode.MissingMember, "Must hold at least one value; leave it out where there is none.");
        return new Given(values);
    }
}
