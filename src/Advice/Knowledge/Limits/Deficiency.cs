namespace Advice.Knowledge.Limits;

/// <summary>Class of a deficiency, in the terms of Directive 2014/45/EU, Article 7 (from memory).</summary>
public enum Deficiency
{
    /// <summary>No deficiency.</summary>
    None,

    /// <summary>No significant effect on safety.</summary>
    Minor,

    /// <summary>May prejudice safety.</summary>
    Major,

    /// <summary>A direct and immediate risk.</summary>
    Dangerous,
}
