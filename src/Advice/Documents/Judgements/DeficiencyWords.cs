using Advice.Knowledge;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Documents.Judgements;

/// <summary>What a class of deficiency asks for, after the classes of Directive 2014/45/EU (from memory).</summary>
internal static class DeficiencyWords
{
    /// <summary>The sentence that says what to do.</summary>
    public static Sentence Action(Deficiency deficiency) => deficiency switch
    {
        Deficiency.Dangerous => Sentences.Dangerous,
        Deficiency.Major => Sentences.Major,
        Deficiency.Minor => Sentences.Minor,
        _ => Sentences.NothingToDo,
    };

    /// <summary>A dangerous deficiency forbids use on the road, a major one has to be mended soon, a minor one does not limit driving.</summary>
    public static DrivingAdvice Driving(Deficiency deficiency) => deficiency switch
    {
        Deficiency.Dangerous => DrivingAdvice.Stop,
        Deficiency.Major => DrivingAdvice.Soon,
        _ => DrivingAdvice.Normal,
    };
}
