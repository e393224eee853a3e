using Advice.Knowledge.Limits;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Binds sources, whether they stand under <c>sources:</c> or in place.</summary>
internal sealed class SourceBinder(Tables tables, Problems problems)
{
    private static readonly string[] InPlace = ["grade", "document", "place", "note"];
    private static readonly string[] Members = ["id", .. InPlace];

    /// <summary>Binds all entries; the two that need no document are always there.</summary>
    public void BindAll(IReadOnlyList<Entry> entries)
    {
        Always("common-practice", new Source(Grade.CommonPractice, null, null, null));
        Always("judgement", new Source(Grade.Judgement, null, null, null));
        foreach (var (id, node) in entries)
            tables.Sources.Bind(id, Source(new EntryReader(node, "source", Members, problems)));
    }

    /// <summary>The source of an entry that must name one.</summary>
    public Source? Required(EntryReader reader)
    {
        if (!reader.Has("source"))
            reader.Refuse(ErrorCode.MissingSource, "source", "'source' is missing; a value needs one, if only 'judgement'");
        return Optional(reader);
    }

    /// <summary>The source of an entry, if it names one.</summary>
    public Source? Optional(EntryReader reader)
    {
        if (reader.Raw("source") is MappingNode)
            return Source(reader.Inner("source", "source", InPlace)!);
        return tables.Sources.TryGet(reader.IdOrNull("source", tables.Sources), out var source) ? source : null;
    }

    private static Source Source(EntryReader reader)
    {
        var grade = reader.OneOf<Grade>("grade", FormatWords.Grades);
        var source = new Source(grade, reader.TextOrNull("document"), reader.TextOrNull("place"), reader.TextOrNull("note"));
        if (source.Document is null && reader.Has("grade") && grade is Grade.Primary or Grade.Secondary or Grade.FromMemory)
            reader.Refuse(ErrorCode.MissingSource, "grade", "a source of this grade names its 'document'");
        return source;
    }

    private void Always(string id, Source source)
    {
        if (tables.Sources.Declare(id, new Place("", 1, 1), out _))
            tables.Sources.Bind(id, source);
    }
}
