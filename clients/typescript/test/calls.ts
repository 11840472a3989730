// The client against a running service: some answers whose numbers are known, then every call with the example of the contract. Exits 1 where anything is not as it must be.
//   node dist/test/calls.js URL
import { readFileSync } from "node:fs";
import { Refusal, SetupClient, pieceBytes, type GetPath, type PostPath, type Schemas } from "../src/index.js";

const client = new SetupClient(process.argv[2]!);

function expect(what: string, value: number | null | undefined, expected: number) {
  console.log(`${what}: ${value}`);
  if (typeof value !== "number" || Math.abs(value - expected) > 1e-6) throw new Error(`${what}: ${expected} was expected`);
}

const wheel = (rimWidthIn: number, offsetMm: number): Schemas["WheelDocument"] => ({ rimDiameterIn: 17, rimWidthIn, offsetMm });
const point = (xMm: number, yMm: number, zMm: number): Schemas["PointDocument"] => ({ xMm, yMm, zMm });

const check = await client.post("/v1/fitment/check", {
  axle: "front",
  vehicle: { frontAxleLoadKg: 690, front: { wheel: wheel(7.5, 45), tyre: { marking: "225/45R17 91W" } } },
  candidate: { wheel: wheel(8, 40), tyre: { marking: "225/45R17 94W XL" } },
});
// Speed symbol W stands for 270 km/h (the handbook "Automotive Engineering: Powertrain, Chassis System and Vehicle Body",
// chapter 10.1, p. 291).
expect("speed rating in km/h", check.checks?.find((item) => item.id === "speedRating")?.value, 270);

const strut: Schemas["MacPhersonStrutDocument"] = {
  kind: "macPhersonStrut",
  points: {
    lowerArmFront: point(12, 378, 192),
    lowerArmRear: point(-312, 388, 196),
    lowerBallJoint: point(8, 716, 178),
    strutTop: point(-67, 561, 843),
    strutLower: point(-14, 628, 405),
    tieRodInner: point(-148, 335, 232),
    tieRodOuter: point(-138, 697, 224),
    wheelCentre: point(0, 751, 305),
  },
};
const sweep = await client.post("/v1/geometry/travel-sweep", {
  vehicle: { front: { suspension: strut, alignment: { camberDeg: -0.7, toeDeg: 0.08 }, loadedRadiusMm: 302 } },
  axle: "front",
  travelMm: { from: -10, to: 10, step: 10 },
});
// At its stated place the wheel has the stated camber.
expect("camber at no travel in degrees", sweep.rows[1]?.camberDeg, -0.7);

const diagnosis = await client.post("/v1/wear/diagnosis", {
  use: { roadKm: 4200, trackLaps: 96, lapKm: 3.2 },
  tyres: [{ position: "frontLeft", newDepthMm: 7.8, depthMm: { outer: 3.4, centre: 5.2, inner: 5.5 } }],
});
// The least of the three depths sent.
expect("least depth in mm", diagnosis.tread[0]?.leastDepthMm, 3.4);

const candidates: Schemas["BatchCandidateLine"][] = [8, 8.5, 21].map((rimWidthIn) => ({ id: `${rimWidthIn}`, candidate: { wheel: wheel(rimWidthIn, 40), tyre: { marking: "225/45R17 94W XL" } } }));
const car: Schemas["BatchCarLine"] = { axle: "front", vehicle: { front: { wheel: wheel(7.5, 45), tyre: { marking: "225/45R17 91W" } } } };
const lines: Schemas["BatchAnswerLine"][] = [];
for await (const line of client.batch([car, ...candidates], { query: { detail: "verdict" } })) lines.push(line);
expect("lines answered", lines.at(-1)?.summary?.answeredCount, 2);
expect("faults of the rim too wide", lines[2]?.problem?.errors.length, 1);
const table = await client.table(car, "id;rimDiameterIn;rimWidthIn;offsetMm;tyreMarking\na;17;8;40;225/45R17 94W XL\n");
expect("rows of the table", table.trim().split("\n").length, 2);
const pairs: Schemas["CatalogueAnswerLine"][] = [];
for await (const pair of client.catalogue([{ id: "one", ...car }], "id;wheelMarking;tyreMarking\na;8Jx17 ET40;225/45R17 94W XL\n")) pairs.push(pair);
expect("pairs", pairs.at(-1)?.summary?.answeredCount, 1);

const refusal = await client.post("/v1/fitment/check", { axle: "front", vehicle: {}, candidate: { wheel: wheel(21, 40), tyre: { marking: "225/45R17" } } }).catch((error: unknown) => error);
expect("status of a refusal", refusal instanceof Refusal ? refusal.status : null, 400);
expect("faults told", refusal instanceof Refusal ? refusal.problem?.errors.length : null, 1);
const tooLong = await client.table(car, "x".repeat(pieceBytes + 1)).catch((error: unknown) => error);
expect("a table too long is not sent", tooLong instanceof RangeError ? 1 : 0, 1);

interface Described { operationId: string; parameters?: { $ref: string }[]; requestBody?: { content: Record<string, { examples: { demo: { $ref: string } } }> }; responses: Record<string, { content: object }> }
interface Parameter { name: string; in: string; example?: unknown }
const contract = JSON.parse(readFileSync(new URL("../../../../api/openapi.json", import.meta.url), "utf8"));
const resolve = (reference: string) => reference.split("/").slice(1).reduce((at, name) => at[name], contract);
let made = 0;
for (const [path, methods] of Object.entries(contract.paths as Record<string, Record<string, Described>>)) {
  for (const [method, operation] of Object.entries(methods)) {
    const parameters = (operation.parameters ?? []).map((one) => resolve(one.$ref) as Parameter).filter((one) => one.example !== undefined);
    const of = (place: string) => Object.fromEntries(parameters.filter((one) => one.in === place).map((one) => [one.name, one.example]));
    const given = { query: of("query"), path: of("path") } as object;
    const example = operation.requestBody?.content["application/json"]?.examples.demo;
    if (method === "post" && !example) continue; // Lines and tables: above.
    const answer = method === "get" ? await client.get(path as GetPath, given) : await client.post(path as PostPath, resolve(example!.$ref).value, given);
    const isJson = "application/json" in operation.responses["200"]!.content;
    if (typeof answer !== (isJson ? "object" : "string")) throw new Error(`${operation.operationId}: ${typeof answer}`);
    made++;
  }
}
console.log(`${made} further calls answered their examples`);
if (made < 45) throw new Error("calls are missing");
