namespace Advice.Rules.Files;

/// <summary>Writes nodes as bytes that <see cref="NodeReader"/> reads; a word that was written before is named by its number.</summary>
internal sealed class NodeWriter(BinaryWriter bytes)
{
    private readonly Dictionary<string, int> _words = [];

    /// <summary>Writes a file.</summary>
    public void WriteFile(MappingNode file)
    {
        Word(file.Place.File);
        Write(file);
    }

    private void Write(Node node)
    {
        bytes.Write((byte)Shape(node));
        bytes.Write7BitEncodedInt(node.Place.Line);
        bytes.Write7BitEncodedInt(node.Place.Column);
        switch (node)
        {
            case ScalarNode scalar:
                Word(scalar.Value);
                break;
            case ListNode list:
                bytes.Write7BitEncodedInt(list.Items.Count);
                foreach (var item in list.Items)
                    Write(item);
                break;
            case MappingNode mapping:
                bytes.Write7BitEncodedInt(mapping.Members.Count);
                foreach (var (key, value) in mapping.Members)
                {
                    Write(key);
                    Write(value);
                }

                break;
        }
    }

    private static NodeShape Shape(Node node) => node switch
    {
        MappingNode => NodeShape.Mapping,
        ListNode => NodeShape.List,
        ScalarNode { Plain: true } => NodeShape.PlainScalar,
        _ => NodeShape.QuotedScalar,
    };

    private void Word(string word)
    {
        if (_words.TryGetValue(word, out var number))
        {
            bytes.Write7BitEncodedInt(number);
            return;
        }

        bytes.Write7BitEncodedInt(_words.Count);
        bytes.Write(word);
        _words.Add(word, _words.Count);
    }
}
