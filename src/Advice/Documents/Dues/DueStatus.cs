namespace Advice.Documents.Dues;

/// <summary>How a service item stands.</summary>
public enum DueStatus
{
    /// <summary>Past its distance or time by more than a tenth.</summary>
    Overdue,

    /// <summary>At its distance or time.</summary>
    Due,

    /// <summary>Within the last tenth of the interval.</summary>
    Soon,

    /// <summary>Neither its time nor its distance can be told.</summary>
    Unknown,

    /// <summary>Not yet.</summary>
    Later,
}
