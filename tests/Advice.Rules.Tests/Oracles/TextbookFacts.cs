using Advice.Evidence;

namespace Advice.Rules.Tests.Oracles;

/// <summary>A fact of the textbook network.</summary>
internal abstract class Fact;

/// <summary>A sign, reported or implied.</summary>
internal sealed class SeenFact(SeenSign sign, bool reported) : Fact
{
    public SeenSign Sign => sign;

    public bool Reported => reported;
}

/// <summary>A fault that some sign speaks for or against.</summary>
internal sealed class LinkedFact(string fault) : Fact
{
    public string Fault => fault;
}

/// <summary>A fault that is suspected.</summary>
internal sealed class SuspectedFact(string fault, double probability) : Fact
{
    public string Fault => fault;

    public double Probability => probability;
}

/// <summary>A check that is advised.</summary>
internal sealed class AdvisedFact(string check) : Fact
{
    public string Check => check;
}
