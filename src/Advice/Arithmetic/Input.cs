namespace Advice.Arithmetic;

/// <summary>What a computation takes.</summary>
/// <param name="Name">Name of the member.</param>
/// <param name="What">What it is.</param>
public abstract record Input(string Name, string What)
{
    /// <summary>Whether it may be left out.</summary>
    public bool Optional { get; init; }

    /// <summary>Whether nothing can be computed without it.</summary>
    public virtual bool IsRequired => !Optional;
}
