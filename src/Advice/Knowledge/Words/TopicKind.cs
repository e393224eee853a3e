namespace Advice.Knowledge.Words;

/// <summary>What the words of a topic say of a text.</summary>
public enum TopicKind
{
    /// <summary>Hardly anyone uses them who does not speak of a vehicle.</summary>
    Vehicle,

    /// <summary>It is about another thing.</summary>
    Other,

    /// <summary>It is about a thing that has parts of a vehicle: the brakes of a bicycle squeal too. So it is where that is named before anything of a vehicle.</summary>
    Machine,

    /// <summary>A sentence of thanks or praise.</summary>
    Courtesy,

    /// <summary>What follows is only compared: "like a dog in pain".</summary>
    Comparison,

    /// <summary>First words of a question or an order that is about no trouble.</summary>
    Question,

    /// <summary>Who asks about the own vehicle uses them.</summary>
    Own,

    /// <summary>Small words of other languages.</summary>
    Foreign,

    /// <summary>Small words of English.</summary>
    English,

    /// <summary>Whose a vehicle is: "my", "wife's".</summary>
    Owner,

    /// <summary>A vehicle of one kind: a truck is no van.</summary>
    Kind,

    /// <summary>Any vehicle.</summary>
    AnyKind,

    /// <summary>Its words are whole sentences that tell of nothing that is wrong with a vehicle.</summary>
    Nothing,
}
