using Advice.Knowledge;

namespace Advice.Documents;

/// <summary>What a class of deficiency asks for, after the classes of Directive 2014/45/EU (from memory).</summary>
internal static class DeficiencyWords
{
    /// <summary>What to do, in one sentence.</summary>
    public static string Action(Deficiency deficiency) => deficiency switch
    {
        Deficiency.Dangerous => "Do not drive it on the road until this is put right.",
        Deficiency.Major => "Have it put right within days.",
        Deficiency.Minor => "Have it put right at the next service, and check it again until then.",
        _ => "Nothing needs to be done about it now.",
    };

    /// <summary>A dangerous deficiency forbids use on the road, a major one has to be mended soon, a minor one does not limit driving.</summary>
    public static DrivingAdvice Driving(Deficiency deficiency) => deficiency switch
    {
        Deficiency.Dangerous => DrivingAdvice.Stop,
        Deficiency.Major => DrivingAdvice.Soon,
        _ => DrivingAdvice.Normal,
    };
}
