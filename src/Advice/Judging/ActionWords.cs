using Advice.Knowledge;

namespace Advice.Judging;

/// <summary>What a class of deficiency asks for, after the classes of Directive 2014/45/EU (from memory).</summary>
internal static class ActionWords
{
    /// <summary>One sentence.</summary>
    public static string For(Deficiency deficiency) => deficiency switch
    {
        Deficiency.Dangerous => "Do not drive it on the road until this is put right.",
        Deficiency.Major => "Have it put right within days.",
        Deficiency.Minor => "Have it put right at the next service, and check it again until then.",
        _ => "Nothing needs to be done about it now.",
    };
}
