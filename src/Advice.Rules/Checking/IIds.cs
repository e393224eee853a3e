namespace Advice.Rules.Checking;

/// <summary>The ids of one kind of entry.</summary>
internal interface IIds
{
    /// <summary>What an entry is called in messages.</summary>
    string Noun { get; }

    /// <summary>All ids.</summary>
    IEnumerable<string> All { get; }

    /// <summary>Whether there is such an entry.</summary>
    bool Contains(string id);
}
