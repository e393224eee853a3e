namespace Advice.Rules.Bench.Drivers;

/// <summary>A way to choose what to ask a driver next.</summary>
public interface IAskingOrder
{
    /// <summary>What it is called where it is printed.</summary>
    string Name { get; }

    /// <summary>Id of the symptom to ask for; null = nothing more to ask.</summary>
    /// <param name="advised">What is concluded so far.</param>
    /// <param name="asked">Ids of what was asked already, answered or not.</param>
    string? Next(Advised advised, IReadOnlySet<string> asked);
}
