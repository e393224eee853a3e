using Advice.Rules.Rows;
using NRules.Fluent.Dsl;

namespace Advice.Rules.Network;

// The whole network. What is known about vehicles is in the rows; these rules only say how knowledge chains. Actions call the workspace and
// hold no lambda of their own: of such a one a compiled action makes a delegate anew at each firing.

/// <summary>A sign from which another follows brings what that other sign brings.</summary>
[Priority(30)]
internal sealed class SignImpliesSign : Rule
{
    public override void Define()
    {
        SignRows<ImpliesRow> implied = null!;
        Workspace work = null!;
        When().Match(() => implied).Match(() => work);
        Then().Do(session => session.InsertAll(work.Imply(implied)));
    }
}

/// <summary>A sign that faults show is evidence, and brings what makes those faults more likely.</summary>
[Priority(20)]
internal sealed class SignSpeaksForFaults : Rule
{
    public override void Define()
    {
        SignRows<LinkRow> links = null!;
        Workspace work = null!;
        When().Match(() => links).Match(() => work);
        Then().Do(session => session.InsertAll(work.Link(links)));
    }
}

/// <summary>A report that may be no fault.</summary>
[Priority(20)]
internal sealed class ReportMayBeNormal : Rule
{
    public override void Define()
    {
        SignRows<NormalRow> normals = null!;
        Workspace work = null!;
        When().Match(() => normals).Match(() => work);
        Then().Do(_ => work.Normal(normals));
    }
}

/// <summary>Something makes suspected faults more or less likely on this vehicle.</summary>
[Priority(10)]
internal sealed class VehicleIsProne : Rule
{
    public override void Define()
    {
        CaseRows<FactorRow> factors = null!;
        Workspace work = null!;
        When().Match(() => factors).Match(() => work);
        Then().Do(_ => work.Weigh(factors));
    }
}

/// <summary>The case calls for cautions.</summary>
[Priority(5)]
internal sealed class CaseCallsForCautions : Rule
{
    public override void Define()
    {
        CaseRows<CautionRow> cautions = null!;
        Workspace work = null!;
        When().Match(() => cautions).Match(() => work);
        Then().Do(_ => work.Caution(cautions));
    }
}

/// <summary>The case limits driving.</summary>
[Priority(5)]
internal sealed class CaseLimitsDriving : Rule
{
    public override void Define()
    {
        CaseRows<DrivingRow> limits = null!;
        Workspace work = null!;
        When().Match(() => limits).Match(() => work);
        Then().Do(_ => work.LimitDriving(limits));
    }
}
