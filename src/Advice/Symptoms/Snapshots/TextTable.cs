using System.Numerics;

namespace Advice.Symptoms.Snapshots;

/// <summary>
/// Texts with their numbers, kept as letters in one array and found by a hash that is the same in every process. So a start reads it at once, where
/// a dictionary would have to be filled text by text.
/// </summary>
internal sealed class TextTable
{
    private const int Free = -1;

    private readonly WrittenLists<char> letters;

    /// <summary>For each hash the number of the text, or of one with a hash before it.</summary>
    private readonly Written<int> slots;
    private readonly string?[] made;

    /// <summary>A table of these texts, each given once; their places are their numbers.</summary>
    public TextTable(IReadOnlyList<string> texts)
    {
        letters = new([.. texts.Select(text => text.ToCharArray())]);
        var places = new int[2 * (int)BitOperations.RoundUpToPowerOf2((uint)texts.Count + 1)];
        Array.Fill(places, Free);
        for (var i = 0; i < texts.Count; i++)
        {
            var slot = Slot(texts[i], places.Length);
            while (places[slot] != Free)
                slot = Next(slot, places.Length);
            places[slot] = i;
        }

        (slots, made) = (new(places), [.. texts]);
    }

    /// <summary>What <see cref="Write"/> wrote.</summary>
    public TextTable(BinaryReader bytes)
    {
        (letters, slots) = (new(bytes), Written<int>.ReadFrom(bytes));
        made = new string?[letters.Count];
    }

    /// <summary>How many texts there are.</summary>
    public int Count => made.Length;

    /// <summary>The text with a number.</summary>
    public string this[int number] => made[number] ??= new(letters[number]);

    /// <summary>The number of a text; below zero where it is none of them.</summary>
    public int Number(string text)
    {
        var places = slots.Span;
        var slot = Slot(text, places.Length);
        while (places[slot] != Free && !letters[places[slot]].SequenceEqual(text))
            slot = Next(slot, places.Length);
        return places[slot];
    }

    /// <summary>Writes the table.</summary>
    public void Write(BinaryWriter bytes)
    {
        letters.WriteTo(bytes);
        slots.WriteTo(bytes);
    }

    /// <summary>The hash FNV-1a; its lower bits depend on all letters.</summary>
    private static int Slot(string text, int count)
    {
        var hash = 2166136261u;
        foreach (var letter in text)
            hash = (hash ^ letter) * 16777619u;
        return (int)(hash ^ (hash >> 15)) & (count - 1);
    }

    private static int Next(int slot, int count) => (slot + 1) & (count - 1);
}
