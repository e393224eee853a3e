namespace Advice.Knowledge.Limits;

/// <summary>How a value is known.</summary>
public enum Grade
{
    /// <summary>The document itself was read.</summary>
    Primary,

    /// <summary>The value was read in a restatement of the document.</summary>
    Secondary,

    /// <summary>The document is meant but was not opened.</summary>
    FromMemory,

    /// <summary>A fact of the trade without a document.</summary>
    CommonPractice,

    /// <summary>Our own estimate.</summary>
    Judgement,
}
