// The native build beside the same service by JIT, in one run: start, resident memory idle and under load, and for five calls the processor time a request and the worst
// request, in paired slices of eight connections. A report: it fails only where the service does.
//   dotnet publish src/SetupService.Api -c Release -o N && dotnet build src/SetupService.Api -c Release -o J
//   node tests/operations/native-beside-jit.mjs N/SetupService.Api J/SetupService.Api [slices] [seconds] [warm-up seconds]
// Another native program in place of the one by JIT compares two native builds.
import { existsSync } from "node:fs";
import { loadavg } from "node:os";
import { ask, example, median, patient, residentMib, sleep, start } from "./service.mjs";

const [native, other, slices = "7", seconds = "2", warmUp = "8"] = process.argv.slice(2);
const commands = { native: [native], [existsSync(`${other}.dll`) ? "JIT" : "other"]: [other] };
const names = Object.keys(commands);
const calls = [
  ["check", "/v1/fitment/check", "fitment-check"],
  ["cornering", "/v1/handling/cornering", "cornering"],
  ["travel sweep", "/v1/geometry/travel-sweep", "travel-sweep"],
  ["ride", "/v1/handling/ride", "ride"],
  ["diagnosis", "/v1/wear/diagnosis", "wear-diagnosis"],
];

// The first start of a program reads it from the disk; what counts is the least of some.
async function starts(command) {
  const ready = [];
  for (let i = 0; i < 5; i++) {
    const service = await start(command);
    ready.push(service.readyMs);
    service.end();
    await sleep(300);
  }
  return ready;
}

const report = (what, values, note = "") => console.log(`| ${what} | ${values.join(" | ")} | ${note} |`);
const spread = (values, digits) => `${median(values).toFixed(digits)} (${Math.min(...values).toFixed(digits)}–${Math.max(...values).toFixed(digits)})`;

console.log(`load average ${loadavg().map((load) => load.toFixed(1)).join(" ")}; ${slices} paired slices of ${seconds} s a call, eight connections, median (least–most)`);
console.log(`| | ${names.join(" | ")} | ${names.join(" / ")} |\n| --- | --- | --- | --- |`);
const ready = {};
for (const name of names) ready[name] = await starts(commands[name]);
report("ready, ms", names.map((name) => spread(ready[name], 0)), (median(ready[names[0]]) / median(ready[names[1]])).toFixed(2));

const services = {};
try {
  for (const name of names) services[name] = await start(commands[name], patient);
  await sleep(1000);
  report("resident idle, MiB", names.map((name) => residentMib(services[name].pid).now.toFixed(1)));
  const underLoad = Object.fromEntries(names.map((name) => [name, 0]));
  for (const [what, path, body] of calls) {
    const request = example(body);
    for (const name of names) await ask(services[name], path, request, Number(warmUp));
    const costs = Object.fromEntries(names.map((name) => [name, []]));
    const slowest = Object.fromEntries(names.map((name) => [name, 0]));
    for (let slice = 0; slice < Number(slices); slice++) {
      for (const name of slice % 2 ? names.toReversed() : names) {
        const { processorUs, slowestMs } = await ask(services[name], path, request, Number(seconds));
        costs[name].push(processorUs);
        slowest[name] = Math.max(slowest[name], slowestMs);
        underLoad[name] = Math.max(underLoad[name], residentMib(services[name].pid).now);
      }
    }
    report(`${what}, µs of processor a request`, names.map((name) => spread(costs[name], 0)), spread(costs[names[0]].map((cost, i) => cost / costs[names[1]][i]), 3));
    report(`${what}, worst request, ms`, names.map((name) => slowest[name].toFixed(0)), (slowest[names[0]] / slowest[names[1]]).toFixed(2));
  }
  report("resident under load, MiB", names.map((name) => underLoad[name].toFixed(1)));
  report("greatest resident, MiB", names.map((name) => residentMib(services[name].pid).greatest.toFixed(1)));
} finally {
  for (const service of Object.values(services)) service.end();
}
