namespace AdviceService.Fleet;

/// <summary>How much is answered to each line.</summary>
internal enum LineDetail
{
    /// <summary>The document.</summary>
    Full,

    /// <summary>The few figures by which a fleet is sorted.</summary>
    Triage,
}
