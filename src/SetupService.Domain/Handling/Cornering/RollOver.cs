namespace SetupService.Domain.Handling.Cornering;

/// <summary>The lateral acceleration at which a car rolls over.</summary>
public static class RollOver
{
    private const double AgreedG = 1e-4;

    /// <summary>The lateral acceleration, g, at this radius up to which there is an equilibrium, not above <paramref name="failedG"/>, which has none.</summary>
    public static double LimitG(CorneringSolver solver, double radiusM, double failedG) =>
        LimitG(solver, TurnPath.AtRadius(default, radiusM), failedG);

    /// <summary>The same along a path, whose radius or speed stays.</summary>
    public static double LimitG(CorneringSolver solver, in TurnPath path, double failedG)
    {
        ArgumentNullException.ThrowIfNull(solver);
        var (stands, fails) = (0.0, failedG);
        while (fails - stands > AgreedG)
        {
            var middle = (stands + fails) / 2;
            var failure = solver.Solve(path.At(middle));
            if (failure is CorneringFailure.WorkSpent) break;
            if (failure is null) stands = middle;
            else fails = middle;
        }

        return stands;
    }
}
