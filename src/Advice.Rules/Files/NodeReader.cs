namespace Advice.Rules.Files;

/// <summary>Reads what <see cref="NodeWriter"/> wrote.</summary>
/// <param name="bytes">The bytes.</param>
/// <param name="places">Whether anybody will ask where a node stands; otherwise equal words are one node, which spares most of them.</param>
internal sealed class NodeReader(BinaryReader bytes, bool places)
{
    private readonly List<string> _words = [];
    private readonly List<ScalarNode?> _plain = [];
    private readonly List<ScalarNode?> _quoted = [];
    private string _file = "";

    /// <summary>Reads a file.</summary>
    public MappingNode ReadFile()
    {
        _file = _words[Number()];
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
            NodeShape.PlainScalar => Scalar(place, _plain, plain: true),
            NodeShape.QuotedScalar => Scalar(place, _quoted, plain: false),
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

    private ScalarNode Scalar(Place place, List<ScalarNode?> known, bool plain)
    {
        var number = Number();
        if (places)
            return new ScalarNode(place, _words[number], plain);
        return known[number] ??= new ScalarNode(place, _words[number], plain);
    }

    private int Number()
    {
        var number = bytes.Read7BitEncodedInt();
        if (number == _words.Count)
        {
            _words.Add(bytes.ReadString());
            _plain.Add(null);
            _quoted.Add(null);
        }

        return number;
    }
}
