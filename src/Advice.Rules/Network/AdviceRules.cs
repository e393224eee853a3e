using Advice.Evidence;
using Advice.Rules.Rows;
using NRules.Fluent.Dsl;

namespace Advice.Rules.Network;

// The whole network. What is known about vehicles is in the rows; these rules only say how knowledge chains.

/// <summary>A sign from which another follows brings the candidates of that other sign.</summary>
[Priority(30)]
internal sealed class SignImpliesSign : Rule
{
    public override void Define()
    {
        SignCandidate candidate = null!;
        Workspace work = null!;
        When().Match(() => candidate, c => c.Holds && c.Row is ImpliesRow).Match(() => work);
        Then().Do(session => session.InsertAll(Follow(candidate, work)));
    }

    private static IReadOnlyList<SignCandidate> Follow(SignCandidate candidate, Workspace work)
    {
        var row = (ImpliesRow)candidate.Row;
        var implied = row.Implied(candidate.Seen);
        work.Implied.Add(new ImpliedSign(candidate.Seen.Sign, implied, row.Rule));
        return work.See(new Seen(implied, reported: false));
    }
}

/// <summary>A sign that a fault shows is evidence, and brings what makes that fault more likely.</summary>
[Priority(20)]
internal sealed class SignSpeaksForFault : Rule
{
    public override void Define()
    {
        SignCandidate candidate = null!;
        Workspace work = null!;
        When().Match(() => candidate, c => c.Holds && c.Row is LinkRow).Match(() => work);
        Then().Do(session => session.InsertAll(work.Link(((LinkRow)candidate.Row).Link(candidate.Seen, candidate.Inquiry))));
    }
}

/// <summary>A report that may be no fault.</summary>
[Priority(20)]
internal sealed class ReportMayBeNormal : Rule
{
    public override void Define()
    {
        SignCandidate candidate = null!;
        Workspace work = null!;
        When().Match(() => candidate, c => c.Holds && c.Row is NormalRow).Match(() => work);
        Then().Do(_ => work.Normals.Add(new NormalReport(candidate.Seen.Sign, ((NormalRow)candidate.Row).Rule)));
    }
}

/// <summary>Something makes a suspected fault more or less likely on this vehicle.</summary>
[Priority(10)]
internal sealed class VehicleIsProne : Rule
{
    public override void Define()
    {
        CaseCandidate candidate = null!;
        Workspace work = null!;
        When().Match(() => candidate, c => c.Holds && c.Row is FactorRow).Match(() => work);
        Then().Do(_ => work.Factors.Add(((FactorRow)candidate.Row).Factor));
    }
}

/// <summary>The case calls for a caution.</summary>
[Priority(5)]
internal sealed class CaseCallsForCaution : Rule
{
    public override void Define()
    {
        CaseCandidate candidate = null!;
        Workspace work = null!;
        When().Match(() => candidate, c => c.Holds && c.Row is CautionRow).Match(() => work);
        Then().Do(_ => work.Cautions.Add(((CautionRow)candidate.Row).Rule));
    }
}

/// <summary>The case limits driving.</summary>
[Priority(5)]
internal sealed class CaseLimitsDriving : Rule
{
    public override void Define()
    {
        CaseCandidate candidate = null!;
        Workspace work = null!;
        When().Match(() => candidate, c => c.Holds && c.Row is DrivingRow).Match(() => work);
        Then().Do(_ => work.Driving.Add(((DrivingRow)candidate.Row).Rule));
    }
}
