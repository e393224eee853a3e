namespace Advice.Rules.Files;

/// <summary>Reads what <see cref="NodeWriter"/> wrote.</summary>
internal sealed class NodeReader(BinaryReader bytes)
{
    private readonly List<string> _words = [];
    private string _file = "";

    /// <summary>Reads a file.</summary>
    public MappingNode ReadFile()
    {
        _file = Word();
        return (MappingNode)Read();
    }

    private Node Read()
    {
        var shape = (NodeShape)bytes.ReadByte();
        var place = new Place(_file, bytes.Read7BitEncodedInt(), bytes.Read7BitEncodedInt());
        return shape switch
        {
            NodeShape.Mapping => Mapping(place),
            NodeShape.List => List(place),
            NodeShape.PlainScalar or NodeShape.QuotedScalar => new ScalarNode(place, Word(), shape == NodeShape.PlainScalar),
            _ => throw new InvalidDataException($"{shape} is no shape of a node."),
        };
    }

    private ListNode List(Place place)
    {
        var items = new Node[bytes.Read7BitEncodedInt()];
        for (var i = 0; i < items.Length; i++)
            items[i] = Read();
        return new ListNode(place, items);
    }

    private MappingNode Mapping(Place place)
    {
        var members = new (ScalarNode, Node)[bytes.Read7BitEncodedInt()];
        for (var i = 0; i < members.Length; i++)
            members[i] = ((ScalarNode)Read(), Read());
        return new MappingNode(place, members);
    }

    private string Word()
    {
        var number = bytes.Read7BitEncodedInt();
        if (number == _words.Count)
            _words.Add(bytes.ReadString());
        return _words[number];
    }
}
