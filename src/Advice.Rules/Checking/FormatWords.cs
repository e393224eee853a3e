using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Rules.Checking;

/// <summary>The closed word lists of the rule format.</summary>
internal static class FormatWords
{
    /// <summary>In so many of a hundred vehicles that have the fault is it noticed.</summary>
    public static readonly Dictionary<string, double> Often = new(StringComparer.Ordinal)
    {
        ["rarely"] = 0.05,
        ["sometimes"] = 0.2,
        ["often"] = 0.5,
        ["usually"] = 0.8,
        ["nearly always"] = 0.95,
    };

    /// <summary>Share of the reports of a symptom that no listed fault explains.</summary>
    public static readonly Dictionary<string, double> Specificity = new(StringComparer.Ordinal)
    {
        ["specific"] = 0.05,
        ["ordinary"] = 0.10,
        ["vague"] = 0.30,
    };

    /// <summary>What it costs a driver to tell whether a symptom is there, our estimate; what only others find is not asked for, since a "no" would say that nobody looked, nor what everybody tells unasked.</summary>
    public static readonly Dictionary<string, double> Told = new(StringComparer.Ordinal)
    {
        ["at once"] = 1,
        ["by looking"] = 2,
        ["by trying"] = 3,
        ["by others"] = double.PositiveInfinity,
        ["unasked"] = double.PositiveInfinity,
    };

    /// <summary>How a value is known.</summary>
    public static readonly Dictionary<string, Grade> Grades = new(StringComparer.Ordinal)
    {
        ["primary"] = Grade.Primary,
        ["secondary"] = Grade.Secondary,
        ["from memory"] = Grade.FromMemory,
        ["common practice"] = Grade.CommonPractice,
        ["judgement"] = Grade.Judgement,
    };

    /// <summary>What the words of a topic say of a text.</summary>
    public static readonly Dictionary<string, TopicKind> Topics = new(StringComparer.Ordinal)
    {
        ["vehicle"] = TopicKind.Vehicle,
        ["other"] = TopicKind.Other,
        ["machine"] = TopicKind.Machine,
        ["courtesy"] = TopicKind.Courtesy,
        ["comparison"] = TopicKind.Comparison,
        ["question"] = TopicKind.Question,
        ["own"] = TopicKind.Own,
        ["foreign"] = TopicKind.Foreign,
        ["english"] = TopicKind.English,
        ["owner"] = TopicKind.Owner,
        ["kind"] = TopicKind.Kind,
        ["anyKind"] = TopicKind.AnyKind,
        ["nothing"] = TopicKind.Nothing,
    };

    /// <summary>The least training that a piece of work needs.</summary>
    public static readonly Dictionary<string, DoneBy> DoneBy = new(StringComparer.Ordinal)
    {
        ["owner"] = Knowledge.Checks.DoneBy.Owner,
        ["technician"] = Knowledge.Checks.DoneBy.Technician,
    };

    /// <summary>Classes of deficiency.</summary>
    public static readonly Dictionary<string, Deficiency> Deficiency = new(StringComparer.Ordinal)
    {
        ["none"] = Knowledge.Limits.Deficiency.None,
        ["minor"] = Knowledge.Limits.Deficiency.Minor,
        ["major"] = Knowledge.Limits.Deficiency.Major,
        ["dangerous"] = Knowledge.Limits.Deficiency.Dangerous,
    };

    /// <summary>How the two sides of an axle are compared.</summary>
    public static readonly Dictionary<string, AxleComparison> AxleComparison = new(StringComparer.Ordinal)
    {
        ["difference"] = Knowledge.Checks.AxleComparison.Difference,
        ["share"] = Knowledge.Checks.AxleComparison.Share,
    };

    /// <summary>Whether it may be driven.</summary>
    public static readonly Dictionary<string, DrivingAdvice> Driving = new(StringComparer.Ordinal)
    {
        ["normal"] = DrivingAdvice.Normal,
        ["soon"] = DrivingAdvice.Soon,
        ["workshopOnly"] = DrivingAdvice.WorkshopOnly,
        ["stop"] = DrivingAdvice.Stop,
    };

    /// <summary>What a case may expect of it: the same, or that nothing tells.</summary>
    public static readonly Dictionary<string, DrivingAdvice> ExpectedDriving = new(Driving, StringComparer.Ordinal) { ["unknown"] = DrivingAdvice.Unknown };

    /// <summary>The word for a class.</summary>
    public static string Of(Deficiency deficiency) => Deficiency.First(word => word.Value == deficiency).Key;

    /// <summary>The word for an advice.</summary>
    public static string Of(DrivingAdvice advice) => ExpectedDriving.First(word => word.Value == advice).Key;

    /// <summary>Truth values.</summary>
    public static readonly Dictionary<string, bool> Truth = new(StringComparer.Ordinal) { ["true"] = true, ["false"] = false };
}
