// The Aldermoor Rill: what a jack, a ruler and a camber gauge are enough for.
import { number } from "./page.mjs";
import { adds, alignment, causes, depths, packages, refused, workOrder } from "./telling.mjs";

export const rill = {
  file: "rill.html",
  title: "A jack, a ruler and a camber gauge",
  lead: "Juno has an old Aldermoor Rill, four sprints a year, 400 EUR and no workshop. Nobody publishes where its suspension joints are, and nobody has to.",
  request: "further/plan-jack-and-ruler.request.json",

  async *chapters(service, request) {
    const { vehicle, wear, bends } = request;
    yield {
      title: "An afternoon on the drive",
      content: [
        { list: [
          "Camber: gauge on the rim, the wheel raised with the jack and weighed down with friends to five heights; nobody reaches under a car that stands on a jack. Typed as it was written down: height and camber, a pair a line.",
          "Springs: a friend sits on the wing, the ruler says how far it went down.",
          "Loads: a weighbridge slip, front and rear. Track and wheelbase: the ruler.",
          "Treads: the ruler again, to half a millimetre, and the answer is told that it is no better.",
        ] },
        { html: `<pre>${JSON.stringify(vehicle.front.suspension.table).slice(1, -1).replaceAll("\\n", "\n")}</pre>` },
        depths(wear.tyres),
      ],
    };

    const diagnosis = await service.ask("/v1/wear/diagnosis", { vehicle, ...wear }, ["use", "tyres", "readOn"]);
    yield { title: "Why they wear like this", content: [{ answer: diagnosis.summary }, causes(diagnosis)] };

    const target = { vehicle, axle: "front", corners: bends };
    const camber = await service.ask("/v1/handling/camber-target", target, adds(diagnosis, "/v1/handling/camber-target"));
    yield {
      title: "How much camber it would need",
      content: [
        { answer: camber.recommended.text ?? camber.summary },
        { picture: { svg: await service.picture("/v1/handling/camber-target/chart?widthPx=560", target), caption: "What each camber does to grip in the bend and to braking." } },
        { text: `From so little the range is wide, and the answer says what widens it most: ${camber.sensitivities.slice(0, 3).map(({ input }) => input.split("/").at(-1)).join(", ")}.` },
      ],
    };

    const plan = await service.ask("/v1/plans", request, adds(diagnosis, "/v1/plans"));
    yield {
      title: "What to buy, if anything",
      content: [
        { answer: plan.summary },
        packages(plan),
        { text: "Left out, and why:" },
        refused(plan),
        { text: "Not known, and said so:" },
        { list: [...new Set(plan.unknown.map(({ reason }) => reason))] },
      ],
    };

    const job = { ...request, chosen: plan.recommended.parts };
    const sheets = await service.ask("/v1/plans/sheets", job, adds(plan, "/v1/plans/sheets"));
    yield {
      title: "What Juno does on Saturday",
      content: [
        { answer: sheets.summary },
        workOrder(sheets),
        alignment(sheets),
        { text: "And how Juno will know:" },
        { list: [sheets.test.enough, sheets.test.stop] },
        { text: `${number(plan.packages[0].cost.amount, 0)} EUR of 400 spent, a Saturday, and an afternoon with the ruler to come.` },
      ],
    };
  },
};
