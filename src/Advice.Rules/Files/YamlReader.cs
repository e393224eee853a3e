using System.Text;
using Advice.Rules.Checking;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Advice.Rules.Files;

/// <summary>Reads a file into nodes. A rule file is data: anchors, aliases, tags, directives and further documents are refused.</summary>
internal sealed class YamlReader
{
    /// <summary>Largest file, bytes.</summary>
    public const int LargestFile = 1 << 20;

    /// <summary>Deepest nesting.</summary>
    public const int Deepest = 12;

    private static readonly UTF8Encoding Utf8 = new(false, throwOnInvalidBytes: true);
    private readonly string file;
    private readonly Problems problems;
    private readonly Parser parser;

    private YamlReader(string file, string text, Problems problems)
    {
        this.file = file;
        this.problems = problems;
        parser = new Parser(new StringReader(text));
    }

    /// <summary>The mapping that the file holds; null where it holds none or cannot be read.</summary>
    public static MappingNode? Read(RuleFile file, Problems problems)
    {
        var start = new Place(file.Path, 1, 1);
        if (file.Content.Length > LargestFile)
        {
            problems.Add(ErrorCode.FileNotRead, start, $"the file is larger than {LargestFile / 1024} KiB; split it by topic");
            return null;
        }

        YamlReader? reader = null;
        var text = "";
        try
        {
            text = Utf8.GetString(file.Content.Span).TrimStart('\uFEFF');
            RefuseTabs(file.Path, text);
            reader = new YamlReader(file.Path, text, problems);
            return reader.Document(start);
        }
        catch (DecoderFallbackException)
        {
            problems.Add(ErrorCode.FileNotRead, start, "the file is not UTF-8 text");
        }
        catch (YamlException error)
        {
            problems.Add(ErrorCode.MalformedYaml, Of(file.Path, error.Start), $"not well-formed YAML: {YamlTrouble.Of(error, text)}");
        }
        catch (InvalidOperationException)
        {
            // The parser gives up without a place on some texts, such as marks of an unfinished merge; it stood near here.
            var near = reader?.parser.Current is { } current ? Of(file.Path, current.End) : start;
            problems.Add(ErrorCode.MalformedYaml, near, "not well-formed YAML here or in the lines below");
        }
        catch (RefusedException refused)
        {
            problems.Add(refused.Code, refused.Place, refused.Message);
        }

        return null;
    }

    // The parser would name the line above, or the start of the file.
    private static void RefuseTabs(string file, string text)
    {
        var line = 0;
        foreach (var part in text.AsSpan().Split('\n'))
        {
            line++;
            var content = text.AsSpan(part);
            var indentation = content.IndexOfAnyExcept(' ');
            if (indentation >= 0 && content[indentation] == '\t')
                throw new RefusedException(ErrorCode.MalformedYaml, new Place(file, line, indentation + 1), "a tab stands in the indentation; use spaces");
        }
    }

    private static Place Of(string file, Mark mark) => new(file, (int)mark.Line, (int)mark.Column);

    private MappingNode? Document(Place start)
    {
        parser.Consume<StreamStart>();
        if (parser.Accept<StreamEnd>(out _))
            return new MappingNode(start, []);
        var head = parser.Consume<DocumentStart>();
        if (head.Version is not null || !head.IsImplicit)
            throw new RefusedException(ErrorCode.NotPlainData, At(head), "directives and document marks ('%', '---') are not allowed; a rule file is one document");
        var root = Value(0);
        parser.Consume<DocumentEnd>();
        if (parser.Accept<DocumentStart>(out var second))
            throw new RefusedException(ErrorCode.NotPlainData, At(second), "a rule file is one document; put the rest into a file of its own");
        switch (root)
        {
            case MappingNode mapping:
                return mapping;
            case ScalarNode { Value: "", Plain: true }:
                return new MappingNode(start, []);
            default:
                problems.Add(ErrorCode.WrongShape, root.Place, $"a rule file is a mapping from kinds of entry to lists, not {root.Shape}");
                return null;
        }
    }

    private Node Value(int depth)
    {
        if (parser.Accept<AnchorAlias>(out var alias))
            throw new RefusedException(ErrorCode.NotPlainData, At(alias), "aliases are not allowed; write the value out");
        var next = parser.Consume<NodeEvent>();
        if (!next.Anchor.IsEmpty)
            throw new RefusedException(ErrorCode.NotPlainData, At(next), "anchors are not allowed; write the value out where it is needed");
        if (!next.Tag.IsEmpty)
            throw new RefusedException(ErrorCode.NotPlainData, At(next), "tags are not allowed; a rule file is plain data");
        if (depth > Deepest)
            throw new RefusedException(ErrorCode.NotPlainData, At(next), $"nested deeper than {Deepest} levels");
        return next switch
        {
            MappingStart => Mapping(At(next), depth),
            SequenceStart => List(At(next), depth),
            Scalar scalar => new ScalarNode(At(next), scalar.Value, scalar.Style == ScalarStyle.Plain),
            _ => throw new RefusedException(ErrorCode.NotPlainData, At(next), "expected a word, a list or a mapping"),
        };
    }

    private ListNode List(Place place, int depth)
    {
        var items = new List<Node>();
        while (!parser.TryConsume<SequenceEnd>(out _))
            items.Add(Value(depth + 1));
        return new ListNode(place, items);
    }

    private MappingNode Mapping(Place place, int depth)
    {
        var members = new List<(ScalarNode, Node)>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            if (Value(depth + 1) is not ScalarNode key)
                throw new RefusedException(ErrorCode.NotPlainData, place, "the name of a member must be one word");
            var value = Value(depth + 1);
            if (names.Add(key.Value))
                members.Add((key, value));
            else
                problems.Add(ErrorCode.RepeatedWord, key.Place, $"'{key.Value}' stands twice in one mapping; keep one of them");
        }

        return new MappingNode(place, members);
    }

    private Place At(ParsingEvent parsed) => Of(file, parsed.Start);

    private sealed class RefusedException(string code, Place place, string message) : Exception(message)
    {
        public string Code { get; } = code;

        public Place Place { get; } = place;
    }
}
