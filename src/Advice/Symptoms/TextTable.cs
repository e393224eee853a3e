namespace Advice.Symptoms;

/// <summary>
/// Texts with their numbers, kept as letters in one array and found by a hash that is the same in every process. So a start reads it at once, where
/// a dictionary would have to be filled text by text.
/// </summary>
internal sealed class TextTable
{
    private const int Free = -1;

    private readonly char[] letters;
    private readonly int[] starts;

    /// <summary>For each hash the number of the text, or of one with a hash before it.</summary>
    private readonly int[] slots;
    private readonly string?[] made;

    /// <summary>A table of these texts, each given once; their places are their numbers.</summary>
    public TextTable(IReadOnlyList<string> texts)
    {
        letters = [.. texts.SelectMany(text => text)];
        starts = new int[texts.Count + 1];
        slots = new int[2 * (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)texts.Count + 1)];
        Array.Fill(slots, Free);
        for (var i = 0; i < texts.Count; i++)
        {
            starts[i + 1] = starts[i] + texts[i].Length;
            var slot = Slot(texts[i]);
            while (slots[slot] != Free)
                slot = Next(slot);
            slots[slot] = i;
        }

        made = [.. texts];
    }

    /// <summary>What <see cref="Write"/> wrote.</summary>
    public TextTable(BinaryReader bytes)
    {
        (letters, starts, slots) = (bytes.ReadArray<char>(), bytes.ReadArray<int>(), bytes.ReadArray<int>());
        made = new string?[starts.Length - 1];
    }

    /// <summary>How many texts there are.</summary>
    public int Count => made.Length;

    /// <summary>The text with a number.</summary>
    public string this[int number] => made[number] ??= new(Letters(number));

    /// <summary>The number of a text; below zero where it is none of them.</summary>
    public int Number(string text)
    {
        var slot = Slot(text);
        while (slots[slot] != Free && !Letters(slots[slot]).SequenceEqual(text))
            slot = Next(slot);
        return slots[slot];
    }

    /// <summary>Writes the table.</summary>
    public void Write(BinaryWriter bytes)
    {
        bytes.WriteArray(letters);
        bytes.WriteArray(starts);
        bytes.WriteArray(slots);
    }

    private ReadOnlySpan<char> Letters(int number) => letters.AsSpan(starts[number], starts[number + 1] - starts[number]);

    /// <summary>The hash FNV-1a; its lower bits depend on all letters.</summary>
    private int Slot(string text)
    {
        var hash = 2166136261u;
        foreach (var letter in text)
            hash = (hash ^ letter) * 16777619u;
        return (int)(hash ^ (hash >> 15)) & (slots.Length - 1);
    }

    private int Next(int slot) => (slot + 1) & (slots.Length - 1);
}
