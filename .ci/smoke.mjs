// Asks a freshly started service for one answer of each kind; exits 1 where one is missing or wrong.
import { readFile } from "node:fs/promises";

const base = process.argv[2];
const sleep = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

async function ready() {
  for (let attempt = 0; attempt < 100; attempt++) {
    try {
      if ((await fetch(`${base}/health/ready`)).ok) return;
    } catch {
      // Not listening yet.
    }
    await sleep(100);
  }
  throw new Error("the service did not become ready within 10 s");
}

async function expect(name, request, test) {
  const response = await request;
  const body = await response.text();
  if (!response.ok || !test(body)) throw new Error(`${name}: ${response.status} ${body.slice(0, 500)}`);
  console.log(`${name}: ${response.status}, ${body.length} characters`);
}

const json = { "content-type": "application/json" };
const post = async (path, file, headers = json) =>
  fetch(`${base}${path}`, { method: "POST", headers, body: await readFile(`api/examples/${file}`) });

await ready();
await expect("document", fetch(`${base}/openapi/v1.json`), (body) => JSON.parse(body).openapi.startsWith("3.1"));
await expect("docs page", fetch(`${base}/docs`), (body) => body.includes("<html"));
await expect("tyre", fetch(`${base}/v1/tyres/decode?marking=225/45R17%2094W%20XL`), (body) => JSON.parse(body).loadCapacityKg === 670);
await expect("check", post("/v1/fitment/check", "fitment-check.request.json"), (body) => JSON.parse(body).verdict !== undefined);
await expect("sweep", post("/v1/geometry/travel-sweep", "travel-sweep.request.json"), (body) => JSON.parse(body).rows.length === 13);
await expect("charts", post("/v1/geometry/travel-sweep/chart", "travel-sweep.request.json"), (body) => body.startsWith("<svg"));
await expect("corner", post("/v1/geometry/drawing", "geometry-drawing.request.json"), (body) => body.startsWith("<svg"));
await expect("adjustment", post("/v1/geometry/adjustment", "adjustment.request.json"), (body) => JSON.parse(body).after.toeDeg !== undefined);
await expect("steering axis", post("/v1/geometry/steering-axis", "steering-axis.request.json"), (body) => JSON.parse(body).scrubRadiusMm !== undefined);
await expect("steer sweep", post("/v1/geometry/steer-sweep/chart", "steer-sweep.request.json"), (body) => body.startsWith("<svg"));
await expect("readings", post("/v1/geometry/caster-from-readings", "caster-from-readings.request.json"), (body) => JSON.parse(body).casterDeg > 6);
await expect("alignment", post("/v1/geometry/alignment", "alignment.request.json"), (body) => JSON.parse(body).thrustAngleDeg < 0);
await expect("ride", post("/v1/handling/ride", "ride.request.json"), (body) => JSON.parse(body).front.dampers.verdict === "keep");
await expect("camber target", post("/v1/handling/camber-target", "camber-target.request.json"), (body) => JSON.parse(body).staticCamberDeg.value < 0);
await expect("what-if", post("/v1/handling/what-if", "what-if.request.json"), (body) => JSON.parse(body).changes.length === 9);
await expect("what-if chart", post("/v1/handling/what-if/chart", "what-if.request.json"), (body) => body.startsWith("<svg"));
await expect("cornering", post("/v1/handling/cornering", "cornering.request.json"), (body) => JSON.parse(body).wheels.frontRight.isOuter);
await expect("envelope", post("/v1/handling/envelope", "envelope.request.json"), (body) => JSON.parse(body).straight.brakingG < -0.5);
await expect("cornering sweep", post("/v1/handling/cornering-sweep/chart", "cornering-sweep.request.json"), (body) => body.startsWith("<svg"));
await expect("diagnosis", post("/v1/wear/diagnosis", "wear-diagnosis.request.json"), (body) => JSON.parse(body).causes[0].cause === "lowNegativeCamber");
await expect("treads", post("/v1/wear/diagnosis/chart", "wear-diagnosis.request.json"), (body) => body.startsWith("<svg"));
await expect("temperatures", post("/v1/wear/temperatures", "wear-temperatures.request.json"), (body) => JSON.parse(body).tyres[0].pressure.coldNow.setKpa > 150);
await expect("forecast", post("/v1/wear/forecast", "wear-forecast.request.json"), (body) => JSON.parse(body).tyres[0].endsFirst.zone === "outer");
await expect("forecast chart", post("/v1/wear/forecast/chart", "wear-forecast.request.json"), (body) => body.startsWith("<svg"));
await expect("before and after", post("/v1/wear/before-after", "wear-before-after.request.json"), (body) => JSON.parse(body).outcome === "better");
await expect("before and after chart", post("/v1/wear/before-after/chart", "wear-before-after.request.json"), (body) => body.startsWith("<svg"));
const compact = new URLSearchParams({ now: "7.5Jx17 ET45,225/45R17 91W", new: "8Jx17 ET40,225/45R17 94W XL", in: 14, out: 18, over: 12 });
await expect("badge", fetch(`${base}/v1/fitment/badge?${compact}`), (body) => body.includes("Not known yet to fit the front axle"));
await expect("picture", fetch(`${base}/v1/fitment/drawing?${compact}`), (body) => body.startsWith("<svg"));
await expect("report", post("/v1/fitment/check/report", "fitment-check.request.json"), (body) => body.includes("Fits the front axle"));
const coded = await fetch(`${base}/v1/reference/load-indices`, { headers: { "accept-encoding": "br" } });
if (coded.headers.get("content-encoding") !== "br" || (await coded.json()).loadIndices.length !== 201) throw new Error("the table did not come in Brotli");
await expect("plan", post("/v1/plans", "plan.request.json"), (body) => JSON.parse(body).recommended.firstStep.text.length > 0);
await expect("sheets", post("/v1/plans/sheets", "plan-sheets.request.json"), (body) => JSON.parse(body).alignment.lines.some((line) => line.task === "set"));
await expect("sheets as a page", post("/v1/plans/sheets/page", "plan-sheets.request.json"), (body) => body.includes("Job sheet"));
await expect("drawing", post("/v1/fitment/drawing", "fitment-drawing.request.json"), (body) => body.startsWith("<svg"));
await expect("batch", post("/v1/fitment/batch", "fitment-batch.request.ndjson", { "content-type": "application/x-ndjson" }),
  (body) => JSON.parse(body.trim().split("\n").at(-1)).summary.isComplete === true);
const catalogue = new FormData();
catalogue.append("cars", new Blob([await readFile("api/examples/fitment-catalogue.cars.ndjson")], { type: "application/x-ndjson" }));
catalogue.append("candidates", new Blob([await readFile("api/examples/fitment-catalogue.request.csv")], { type: "text/csv" }));
await expect("catalogue", fetch(`${base}/v1/fitment/catalogue?only=pass,caution`, { method: "POST", body: catalogue }),
  (body) => JSON.parse(body.trim().split("\n").at(-1)).summary.answeredCount === 2);
