// The Aldermoor Tarn: a front-driven road car on track days, its front struts known from readings. From a worn shoulder to the proof.
import { number } from "./page.mjs";
import { adds, alignment, byBudget, causes, depths, packages, refused, workOrder } from "./telling.mjs";

const spentOn = (plan) => plan.packages.find(({ isRecommended }) => isRecommended).cost.amount;

export const tarn = {
  file: "tarn.html",
  title: "The outer shoulders were gone by August",
  lead: "Maren drives her Aldermoor Tarn to work and to five track days a year. The front tyres die at their outer shoulders while the rest of the tread is half new. She has 1,500 EUR, and would rather not ruin the car for the other 360 days.",
  request: "plan.request.json",
  data: "tarn-season.json",

  async *chapters(service, request, season) {
    const { vehicle, wear, bends, heldLateralG } = request;
    yield {
      title: "What she measured",
      content: [
        { text: `A depth gauge across three tyres, ${number(wear.use.roadKm, 0)} km of road and ${wear.use.trackLaps} laps after they were new. Both fronts have lost most outside; the rear is even.` },
        depths(wear.tyres),
        { text: "The car itself: wheelbase, axle loads, springs and bars from its papers, and the front camber read at five heights on a jack. She types this once; every call below is sent the same car." },
      ],
    };

    const diagnosis = await service.ask("/v1/wear/diagnosis", { vehicle, ...wear }, ["vehicle", "use", "tyres", "readOn"]);
    yield {
      title: "Why they wear like this",
      content: [
        { answer: diagnosis.summary },
        causes(diagnosis),
        { picture: { svg: await service.picture("/v1/wear/diagnosis/chart?widthPx=560", { vehicle, ...wear }), caption: "Depth across each tread as read, and what the wear model makes of it." } },
        { text: "Worn outside is not the same as too little camber: low pressure wears both shoulders, toe feathers. The treads decide between them, and the answer says what to read next to be surer." },
      ],
    };

    const target = { vehicle, axle: "front", corners: bends, heldLateralG };
    const camber = await service.ask("/v1/handling/camber-target", target, adds(diagnosis, "/v1/handling/camber-target"));
    yield {
      title: "How much camber it would need",
      content: [
        { answer: camber.recommended.text },
        { picture: { svg: await service.picture("/v1/handling/camber-target/chart?widthPx=560", target), caption: "What each camber does to grip in her bends and to braking." } },
        { text: "So the adjuster ends long before the tyre stands flat. That is the part to buy for, and the one question left is which." },
      ],
    };

    const plan = await service.ask("/v1/plans", request, adds(diagnosis, "/v1/plans"));
    yield {
      title: "What to buy, if anything",
      content: [
        { text: "Six parts from the shop's list, with prices, hours and what each changes of the car. The service builds every package of them, evaluates each with the models of the single calls, and throws out what a careful shop would." },
        { answer: plan.summary },
        packages(plan),
        { text: "Left out, and why:" },
        refused(plan),
        { text: `How it goes with the money: ${byBudget(plan)}.` },
      ],
    };

    // Her own wish, which the plan refused.
    const candidate = { wheel: { marking: "9Jx17 ET20" }, tyre: vehicle.front.tyre };
    const wish = { vehicle, axle: "front", candidate };
    const fit = await service.ask("/v1/fitment/check", wish, ["axle", "candidate"]);
    yield {
      title: "But the wide wheels?",
      content: [
        { text: "She liked the nine-inch wheels most. The check says what the plan's one line meant." },
        { answer: fit.summary },
        { picture: { svg: await service.picture("/v1/fitment/drawing", wish), caption: "The corner from behind: the wheel of today and the one she liked, gaps in millimetres." } },
      ],
    };

    // What the shop knows beside the plan: two torques from the car's papers, the arch heights, and how the treads wore before.
    const job = {
      ...request,
      chosen: plan.recommended.parts,
      torques: [{ fastener: "wheelFasteners", torqueNm: 110 }],
      frontArchHeightMm: 662,
      rearArchHeightMm: 668,
      before: season.before,
    };
    const sheets = await service.ask("/v1/plans/sheets", job, [...adds(plan, "/v1/plans/sheets"), "torques", "frontArchHeightMm", "rearArchHeightMm", "before"]);
    yield {
      title: "The job on the ramp",
      content: [
        { text: "She takes the plan to the shop. The same body with the parts chosen comes back as the workshop's sheets; the call beside it gives them as pages to print." },
        { answer: sheets.summary },
        workOrder(sheets),
        alignment(sheets),
        { text: "What they will test, before anybody says it works:" },
        { answer: sheets.test.enough },
        { list: [sheets.test.proof, sheets.test.stop] },
      ],
      files: [{ name: "tarn-sheets.html", text: "The sheets as they are printed", html: await service.picture("/v1/plans/sheets/page", job) }],
    };

    const set = plan.recommended.firstStep.settings.find(({ axle }) => axle === "front");
    const after = structuredClone(vehicle);
    after.front.alignment.camberDeg = set.statedCamberDeg;
    after.front.adjustable.camberDeg.from = request.parts.find(({ id }) => id === plan.recommended.parts[0]).change.vehicle.front.adjustable.camberDeg.from;
    const proof = await service.ask("/v1/wear/before-after", season, adds(plan, "/v1/wear/before-after"));
    yield {
      title: "Three sessions later",
      content: [
        { text: `${plan.recommended.parts.join(" and ")} fitted, front camber at ${number(set.camberDeg)}°, new front tyres of the same kind. She went on reading the treads at every session, as before.` },
        { answer: proof.summary },
        { picture: { svg: await service.picture("/v1/wear/before-after/chart?widthPx=560", season), caption: "Wear of the shoulders by the centre, before and after, with the range sessions vary by." } },
        { text: "A better lap time would prove little: tyres, weather and driver change too. The ratio of shoulder to centre on the same tyre cancels most of that, and where it does not suffice the answer says how many more sessions would." },
      ],
    };

    const last = season.after.tyres.map(({ position, newDepthMm, readings }) => ({ position, newDepthMm, depthMm: readings.at(-1).depthMm }));
    const use = { roadKm: 4200, trackLaps: 96, lapKm: wear.use.lapKm };
    const then = await service.ask("/v1/wear/diagnosis", { vehicle: after, use, tyres: last }, adds(proof, "/v1/wear/diagnosis"));
    yield {
      title: "And now?",
      content: [
        { text: "The same question as in August, asked of the new treads on the car as it is now." },
        depths(last),
        { answer: then.summary },
        { text: `So it ends here: ${number(spentOn(plan), 0)} EUR of 1,500 spent, an alignment beside, and the wide wheels stay in the shop. She reads the treads when the answer says so.` },
      ],
    };
  },
};
