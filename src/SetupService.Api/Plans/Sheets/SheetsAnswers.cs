using SetupService.Api.Fitment.Check;
using SetupService.Api.Http.Shared;
using SetupService.Api.Wear;
using SetupService.Api.Wear.BeforeAfter;
using SetupService.Api.Wear.Temperatures;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Planning;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Plans.Sheets;

/// <summary>Puts down the sheets of a package with all they rest on.</summary>
internal static class SheetsAnswers
{
    private static readonly WheelPosition[] Wheels = Enum.GetValues<WheelPosition>();

    /// <summary>The answer.</summary>
    public static PlanSheetsAnswer Create(SheetedPlan sheet)
    {
        var (package, plan, units) = (sheet.Package, sheet.Plan, sheet.Units);
        PressureLine[] pressures = [.. Pressures(sheet)];
        var work = sheet.Work with { Lead = Lead(sheet), LeadCodes = [.. PlanAnswers.Worn(plan).Select(one => one.Code).Where(TreadsFirst.StopCodes.Contains).Distinct()], HasTrackPressures = pressures.Any(one => one.IsForTheTrackOnly) };
        var steps = WorkOrder.Write(work, units);
        var lines = AlignmentSheet.Write(plan.Case.Given, package, work.Parts);
        var test = Test(sheet);
        var answer = new PlanSheetsAnswer
        {
            Summary = SheetWords.Summary(work, steps, package, FirstTry(sheet), units),
            Package = new()
            {
                Parts = [.. sheet.Work.Parts.Select(one => one.Part.Id)],
                IsRecommendation = sheet.Planned is not null,
                Cost = new() { Amount = package.Package.Cost.Total, Currency = plan.Inputs.Currency, LabourHours = package.Package.Cost.LabourHours, SavedHours = package.Package.Cost.SavedHours, Alignment = package.Package.Cost.Alignment },
                Settings = [.. package.Evaluated.Settings.Select(PlanAnswers.Setting)],
                Doubts = [.. package.Doubts.Select(one => PlanAnswers.Rejection([.. sheet.Work.Parts.Select(part => part.Part.Id)], one))],
            },
            WorkOrder = new()
            {
                Steps = [.. steps.Select(step => Step(step, units))],
                Tools = [.. SheetCautions.Tools(sheet.Work)],
                LabourHours = package.Package.Cost.LabourHours,
                SavedHours = package.Package.Cost.SavedHours,
            },
            Alignment = new()
            {
                Loaded = SheetWords.Loaded(plan.Inputs.Vehicle, work.HasTrackPressures, units),
                Order = [.. SheetWords.Order(lines)],
                Lines = [.. lines.Select(line => Line(line, units))],
                RideHeights = [.. AlignmentSheet.RideHeights(package, (sheet.Request.FrontArchHeightMm, sheet.Request.RearArchHeightMm)).Select(RideHeight)],
            },
            Pressures = [.. pressures.Select(Pressure)],
            Fit = [.. sheet.Fits().Select(fit => new SheetFitResponse { Axle = fit.Axle.Axle, Check = fit.Check.ToAnswer(units, CheckDetail.Full, Changed(fit.Axle.Axle)) })],
            FitText = SheetWords.Fit(package),
            Tyres = [.. Wheels.Select(at => Tyre(sheet, at))],
            Test = ToResponse(test, package, units),
            Unknown = [],
            Method = "plan-sheets",
            Edition = Edition.Current,
            Next = NextCalls.AfterSheets,
            Assumptions = [.. Own(sheet), .. PlanAnswers.Assumptions(plan)],
            Cautions = CautionResponse.From(Cautions(sheet, steps)),
        };
        return answer with { Unknown = [.. SheetGaps.Find(sheet, answer)] };
    }

    /// <summary>The temperatures call with what is left of the readings: of wheels and tyres that stay.</summary>
    public static HeatReadings Heat(SheetedPlan sheet) => new(
        new TemperaturesRequest
        {
            Tyres = [.. (sheet.Request.Wear?.Tyres ?? []).Where(tyre => !IsOther(sheet, tyre.Position))],
            ReadOn = sheet.Request.Wear?.ReadOn,
            ColdTemperatureC = sheet.Request.ColdTemperatureC,
            NextColdTemperatureC = sheet.Request.NextColdTemperatureC,
            AltitudeM = sheet.Request.AltitudeM,
        },
        sheet.Package.Evaluated.Car!.Stated,
        sheet.Today);

    /// <summary>True where the package puts another tyre on than was read.</summary>
    public static bool IsOther(SheetedPlan sheet, WheelPosition at)
    {
        var axle = WheelPositions.AxleOf(at);
        var (before, after) = (sheet.Plan.Inputs.Vehicle.At(axle), sheet.Package.Evaluated.Car!.Stated.At(axle));
        return !Equals(before.Tyre?.Marking, after.Tyre?.Marking) || before.Tyre?.Category != after.Tyre?.Category || IsRenewed(sheet, axle);
    }

    private static bool IsRenewed(SheetedPlan sheet, CarAxle axle) => sheet.Work.Has(axle, PartKind.Tyre) || sheet.Work.Has(null, PartKind.Tyre);

    private static IEnumerable<PressureLine> Pressures(SheetedPlan sheet)
    {
        var heat = Heat(sheet);
        var heats = heat.Heats(sheet.Units);
        TyreCondition[] states = [.. heat.Request.Tyres.Select(tyre => TyreReadingMapper.Condition(tyre, sheet.Today))];
        var actions = HeatActions.List(heats, TyreCautions.Unsafe(states, sheet.Units)?.Text, heat.Conditions, heat.AirC, sheet.Units);
        foreach (var at in Wheels)
        {
            var isMateRead = heats.Any(one => one.Position != at && WheelPositions.AxleOf(one.Position) == WheelPositions.AxleOf(at) && one.Pressure is not null);
            var read = Array.FindIndex(heats, one => one.Position == at);
            yield return PressureSheet.Write(read < 0 ? new(at, null, null) : heats[read], LoadNeed.Compute(heat.Vehicle, at), IsOther(sheet, at), sheet.Plan.Case.Use.TrackDays <= 0, isMateRead, actions, heat.Conditions, sheet.Units);
        }
    }

    private static TestPlan Test(SheetedPlan sheet)
    {
        var (request, use) = (sheet.Request, sheet.Plan.Case.Use);
        var sessions = request.TestSessionCount ?? TestPlan.UsualSessions;
        var laps = request.LapsPerSession ?? (use.TrackDays > 0 ? use.LapsPerDay / TestPlan.UsualSessions : null);
        var plan = new TestPlan { IsAsItStands = sheet.Work.IsAsItStands, IsOnOtherTyres = Wheels.Any(at => IsOther(sheet, at)), Sessions = sessions, LapsPerSession = laps, ExpectedRatio = request.ExpectedRatio ?? TestPlan.RatioOf(sheet.Package.Figures) };
        return request.Before is not { } before ? plan : plan with
        {
            Tyres = BeforeAfterMapper.Compute(new BeforeAfterRequest { Before = before, ExpectedRatio = plan.ExpectedRatio, PlannedReadings = plan.Readings, PlannedLaps = plan.Laps }),
        };
    }

    // What the tyres of today ask for; that their treads are near their end is settled where the work puts others on.
    private static string? Lead(SheetedPlan sheet)
    {
        var first = sheet.Plan.Case.First;
        if (first.Stop is { } stop) return stop;
        if (sheet.Work.HasAnywhere(PartKind.Tyre)) return null;
        var (texts, isAgainst) = first.OnCamber(sheet.Package.Evaluated.Settings, sheet.Plan.Inputs.Vehicle);
        return first.Hold ?? (isAgainst ? string.Join(' ', texts) : null);
    }

    // A recommendation may begin with the car's own adjusters, and the parts may then not be wanted.
    private static string? FirstTry(SheetedPlan sheet)
    {
        if (sheet.Planned is not { } planned || sheet.Work.Parts.Count == 0) return null;
        var (text, settings) = new PlanWords(planned.Case, planned.Changes.Parts, planned.Result, planned.Units).FirstStep(sheet.Package);
        return settings.Count == 0 || ReferenceEquals(settings, sheet.Package.Evaluated.Settings) ? null : text;
    }

    private static string Changed(CarAxle axle) => $"/vehicle/{CorneringWords.Name(axle)}";

    private static WorkStepResponse Step(WorkStep step, UnitSystem units) => new()
    {
        Stage = step.Stage,
        Axle = step.Axle,
        Text = step.Text,
        Parts = [.. step.Parts],
        Torques = [.. step.Fasteners.Select(one => new FastenerTorqueResponse { Fastener = one.Fastener, Axle = one.Axle, TorqueNm = one.TorqueNm, Text = SheetWords.Torque(one.TorqueNm, units) })],
        CautionCodes = [.. step.Cautions],
    };

    private static AlignmentLineResponse Line(AlignmentLine line, UnitSystem units) => new()
    {
        Axle = line.Axle,
        Side = line.Side,
        Angle = line.Angle,
        Task = line.Task,
        NowDeg = line.NowDeg,
        TargetDeg = line.TargetDeg,
        ChangeDeg = line.ChangeDeg,
        AimDeg = line.AimDeg,
        ToleranceDeg = line.ToleranceDeg,
        Text = SheetWords.Angle(line.Angle, line.TargetDeg, units),
    };

    private static RideHeightResponse RideHeight(RideHeightLine line) => new()
    {
        Axle = line.Axle,
        NowMm = line.NowMm,
        ChangeMm = line.ChangeMm,
        TargetMm = line.TargetMm,
        ToleranceMm = AlignmentSheet.RideHeightToleranceMm,
    };

    private static PressureSheetResponse Pressure(PressureLine line) => new()
    {
        Position = line.Position,
        ColdKpa = line.ColdKpa,
        RoadColdKpa = line.RoadColdKpa,
        HotKpa = line.HotKpa,
        AimHotKpa = line.AimHotKpa,
        LeastColdKpa = line.Need.LeastColdKpa,
        PlateKpa = line.Need.PlateKpa,
        Text = line.Text,
    };

    private static TyreRecordResponse Tyre(SheetedPlan sheet, WheelPosition at)
    {
        var isOther = IsOther(sheet, at);
        var read = isOther ? null : Array.Find(sheet.Request.Wear?.Tyres ?? [], tyre => tyre.Position == at);
        return new()
        {
            Position = at,
            Marking = sheet.Package.Evaluated.Car!.Stated.At(WheelPositions.AxleOf(at)).Tyre?.Marking.Text,
            IsOther = isOther,
            MadeWeek = read?.MadeWeek,
            DepthMm = read?.DepthMm is { } depths ? DepthsResponse.From(depths.ToDomain()) : null,
        };
    }

    private static TestPlanResponse ToResponse(TestPlan test, JudgedPackage package, UnitSystem units) => new()
    {
        SessionCount = test.Sessions,
        LapsPerSession = test.LapsPerSession,
        ReadingCount = test.Readings,
        PlannedLaps = test.Laps,
        ExpectedRatio = test.ExpectedRatio,
        Read = [.. test.ToRead(units).Select(one => new TestReadingResponse { When = one.When, What = one.What })],
        Enough = test.Enough(units),
        Proof = test.Proof,
        Stop = test.Stop(package.Evaluated.Settings, units),
        Tyres = [.. test.Tyres.Select(tyre => BeforeAfterMapper.Tyre(tyre, units))],
    };

    /// <summary>What the sheets take beside the plan.</summary>
    public static IEnumerable<AssumptionResponse> Own(SheetedPlan sheet)
    {
        const string Practice = "common practice, no source";
        var test = Test(sheet);
        yield return Assumption("/chosen", null, "the order of work and how each kind of part is fitted", Practice, "The makers' own instructions for this car and these parts come first.");
        yield return Assumption("/chosen", AlignmentSheet.CamberToleranceDeg, null, Practice, FormattableString.Invariant($"Value is the tolerance of camber, deg; toe of a wheel has {AlignmentSheet.ToeToleranceDeg}°, caster {AlignmentSheet.CasterToleranceDeg}°. The vehicle maker's are to be kept where they are closer."));
        yield return Assumption("/chosen", AlignmentSheet.RideHeightToleranceMm, null, Practice, "Value is the tolerance of ride heights, mm.");
        yield return Assumption("/chosen", AxleInputs.DefaultMeasuringDiameterMm, null, Practice, "Value is the diameter, mm, over which toe is told in mm.");
        if (sheet.Request.TestSessionCount is null) yield return Assumption("/testSessionCount", test.Sessions, null, Practice, "Sessions of a track day.");
        if (sheet.Request.LapsPerSession is null && test.LapsPerSession is { } laps) yield return Assumption("/lapsPerSession", laps, null, "use.lapsPerDay", "A day's laps in four sessions.");
        if (sheet.Request.ExpectedRatio is null && test.ExpectedRatio is { } ratio) yield return Assumption("/expectedRatio", ratio, null, "the plan's tread life", "The wear of the place that ends first, with the package by without; of other places it may be another.");
        var heat = Heat(sheet);
        TyrePressure?[] pressures = [.. heat.Request.Tyres.Select(heat.PressureOf)];
        if (pressures.Any(one => one is not null))
        {
            foreach (var one in TemperaturesAssumptions.OfPressures(heat, pressures)) yield return one;
        }

        if (sheet.Request.Before is { } before)
        {
            foreach (var one in BeforeAfterMapper.Assumptions(new BeforeAfterRequest { Before = before, PlannedReadings = test.Readings }, [.. test.Tyres])) yield return one;
        }
    }

    private static List<Caution> Cautions(SheetedPlan sheet, IReadOnlyList<WorkStep> steps)
    {
        var heat = Heat(sheet);
        List<Caution> tyres = [.. PlanAnswers.Worn(sheet.Plan)];
        List<Caution> list =
        [
            .. tyres.Where(one => TreadsFirst.StopCodes.Contains(one.Code)),
            .. SheetCautions.For(sheet.Work, steps),
            .. sheet.Fits().SelectMany(fit => Domain.Fitment.FitmentCautions.For(fit.Axle.Car, fit.Axle.Candidate, fit.Axle.Sheet, sheet.Units)),
            .. tyres,
            .. PressureCautions.For([.. heat.Request.Tyres.Select(heat.PressureOf).OfType<TyrePressure>()]),
            .. sheet.Plan.Case.Given.Stated.SuspensionCautions(sheet.Units),
        ];
        return [.. list.DistinctBy(one => one.Code)];
    }

    private static AssumptionResponse Assumption(string input, double? value, string? text, string source, string reason) => new() { Input = input, Value = value, Text = text, Source = source, Reason = reason };
}
