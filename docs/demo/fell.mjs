// The Aldermoor Fell: rear-driven, double wishbones at both ends known from their points, lowered by its last owner.
import { number } from "./page.mjs";
import { adds, alignment, causes, depths, packages, refused } from "./telling.mjs";

export const fell = {
  file: "fell.html",
  title: "Lowered by its last owner",
  lead: "Ossian bought an Aldermoor Fell for eight runs at each of three hill climbs and the roads between. It sits low and looks right, and in one year its rear tyres have lost twice as much inside as outside.",
  request: "further/plan-rear-driven.request.json",

  async *chapters(service, request) {
    const { vehicle, wear } = request;
    yield {
      title: "What the shop found",
      content: [
        { text: `Rear camber ${number(vehicle.rear.alignment.camberDeg)}° where the car came with −1.4°, and an adjuster that ends at ${number(vehicle.rear.adjustable.camberDeg.to)}°. The suspension's points were measured on the floor, so the service knows how each wheel moves.` },
        depths(wear.tyres),
      ],
    };

    const sweep = { vehicle, axle: "rear", travelMm: { from: -50, to: 50, step: 5 } };
    const rows = (await service.ask("/v1/geometry/travel-sweep", sweep, ["axle", "travelMm"])).rows;
    const [up, level] = [rows.find(({ travelMm }) => travelMm === 30), rows.find(({ travelMm }) => travelMm === 0)];
    yield {
      title: "Where the camber comes from",
      content: [
        { text: `30 mm of bump lean the rear wheel ${number(Math.abs(up.camberDeg - level.camberDeg))}° further in. A car that was lowered by as much carries that camber on every straight road.` },
        { picture: { svg: await service.picture("/v1/geometry/travel-sweep/chart?widthPx=560", sweep), caption: "Camber, toe and the rest over the rear wheel's travel." } },
      ],
    };

    const diagnosis = await service.ask("/v1/wear/diagnosis", { vehicle, ...wear }, ["use", "tyres", "readOn"]);
    yield {
      title: "Why they wear like this",
      content: [
        { answer: diagnosis.summary },
        causes(diagnosis),
        { picture: { svg: await service.picture("/v1/wear/diagnosis/chart?widthPx=560", { vehicle, ...wear }), caption: "Depth across each tread as read." } },
      ],
    };

    const plan = await service.ask("/v1/plans", request, adds(diagnosis, "/v1/plans"));
    yield {
      title: "What to buy, if anything",
      content: [
        { text: "He asks for tread life first, then grip, quiet and comfort; everything must be legal on the road and come off again. The shop's list has two kinds of rear arm, stiffer springs, a front bar, wider wheels and track tyres." },
        { answer: plan.summary },
        packages(plan),
        { text: "Left out, and why:" },
        refused(plan),
        ...(plan.packages[0].whileApart.length ? [{ text: `Worth renewing while the arms are off: ${plan.packages[0].whileApart.map(({ part, amount, savedHours }) => `${part} for ${number(amount, 0)} EUR, ${number(savedHours)} h saved`).join("; ")}.` }] : []),
      ],
    };

    const changes = request.parts.filter(({ id }) => ["rear-camber-arms", "hill-springs", "front-bar"].includes(id)).map(({ id, change }) => ({ label: id, ...change }));
    changes[0].vehicle = structuredClone(changes[0].vehicle);
    changes[0].vehicle.rear.alignment = { camberDeg: plan.recommended.firstStep.settings[0].statedCamberDeg };
    const bend = { lateralG: 0.8, cornerRadiusM: 30, turn: "left" };
    const whatIf = await service.ask("/v1/handling/what-if", { vehicle, ...bend, changes }, adds(plan, "/v1/handling/what-if"));
    yield {
      title: "What it does to the car at the limit",
      content: [
        { list: whatIf.changes.map(({ label, text }) => `${label}: ${text}`) },
        { text: "All three together:" },
        { answer: whatIf.together.text },
        { picture: { svg: await service.picture("/v1/handling/what-if/chart?widthPx=560", { vehicle, ...bend, changes }), caption: "Each change by itself in one tight bend, and all of them together." } },
        { text: "A rear-driven car that keeps its rear tyres flat on the road must not become one that lets them go first: that is why the plan looks at which end gives up before it recommends anything." },
      ],
    };

    const job = { ...request, chosen: plan.recommended.parts };
    const sheets = await service.ask("/v1/plans/sheets", job, adds(plan, "/v1/plans/sheets"));
    yield {
      title: "How it is set, and how he will know",
      content: [
        { answer: sheets.summary },
        alignment(sheets),
        { list: [sheets.test.enough, sheets.test.proof, sheets.test.stop] },
        { text: `${number(plan.packages[0].cost.amount, 0)} EUR, alignment and all, and the stiffer springs stay on the shelf.` },
      ],
    };
  },
};
