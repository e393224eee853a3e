namespace Advice.Symptoms.Snapshots;

/// <summary>Lists of numbers that stand one after the other in written bytes.</summary>
internal sealed class WrittenLists<T>
    where T : unmanaged
{
    /// <summary>Where each list begins; then where the last ends.</summary>
    private readonly Written<int> starts;
    private readonly Written<T> numbers;

    /// <summary>These lists.</summary>
    public WrittenLists(IReadOnlyCollection<IReadOnlyCollection<T>> lists)
    {
        var begin = new int[lists.Count + 1];
        foreach (var (place, list) in lists.Index())
            begin[place + 1] = begin[place] + list.Count;
        (starts, numbers) = (new(begin), new([.. lists.SelectMany(list => list)]));
    }

    /// <summary>What <see cref="WriteTo"/> wrote.</summary>
    public WrittenLists(BinaryReader reader) => (starts, numbers) = (Written<int>.ReadFrom(reader), Written<T>.ReadFrom(reader));

    /// <summary>How many lists there are.</summary>
    public int Count => starts.Length - 1;

    /// <summary>The list with that place.</summary>
    public ReadOnlySpan<T> this[int place]
    {
        get
        {
            var begin = starts.Span;
            return numbers.Span[begin[place]..begin[place + 1]];
        }
    }

    /// <summary>Writes them.</summary>
    public void WriteTo(BinaryWriter writer)
    {
        starts.WriteTo(writer);
        numbers.WriteTo(writer);
    }
}
