// What keys, limits, a JSON line for every request and metrics cost a fitment check: the service with all of them beside the same with none, in one run,
// in paired slices of eight connections. Prints the processor time of the one by that of the other for a request.
//   node tests/operations/overhead.mjs /some/folder/SetupService.Api [slices] [seconds]
import { execFileSync } from "node:child_process";
import { ask, example, median, start } from "./service.mjs";

const [program, slices = "7", seconds = "3"] = process.argv.slice(2);
const body = example("fitment-check");

function makeKey() {
  const lines = execFileSync(program, ["new-key", "bench"]).toString().split("\n");
  const settings = Object.fromEntries(lines.filter((line) => line.startsWith("Access__")).map((line) => [line.slice(0, line.indexOf("=")), line.slice(line.indexOf("=") + 1)]));
  return { key: lines[1].trim(), settings };
}

const { key, settings } = makeKey();
const plain = await start([program]);
const full = await start([program], {
  ...settings, Log__Format: "Json", Log__EveryRequest: "true", Telemetry__Metrics: "true", Limits__BurstUnits: "1000000000", Limits__SustainedUnits: "1000000000000",
});
const cost = async (service, length) => (await ask(service, "/v1/fitment/check", body, length, service === full ? { "Api-Key": key } : {})).processorUs;
try {
  await cost(plain, 2);
  await cost(full, 2);
  const ratios = [];
  for (let slice = 0; slice < Number(slices); slice++) {
    const costs = new Map();
    for (const service of slice % 2 ? [full, plain] : [plain, full]) costs.set(service, await cost(service, Number(seconds)));
    ratios.push(costs.get(plain) / costs.get(full));
    console.log(`slice ${slice + 1}: plain ${costs.get(plain).toFixed(1)} µs, with everything ${costs.get(full).toFixed(1)} µs of processor a request, ${ratios.at(-1).toFixed(3)} of the plain rate`);
  }
  console.log(`median ${median(ratios).toFixed(3)} (at least 0.9 is wanted)`);
} finally {
  plain.end();
  full.end();
}
