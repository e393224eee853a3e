namespace AdviceService.Http;

/// <summary>Whether the service may be sent requests: the rules are loaded and one advice was given.</summary>
internal sealed class Readiness
{
    private volatile bool _ready;

    /// <summary>Whether it is ready.</summary>
    public bool IsReady
    {
        get => _ready;
        set => _ready = value;
    }
}
