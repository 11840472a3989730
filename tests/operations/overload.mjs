// Load at twice what the service can do, for a minute, open loop: requests are sent by the clock, whether or not those before them are answered. What was accepted must be
// answered quickly, the rest refused at once with 503 and Retry-After, and memory must come back. Exits 1 where it is not so.
//   node tests/operations/overload.mjs /some/folder/SetupService.Api [seconds] [times of capacity]
// The service is started with a short wait for a turn (Work:QueueSeconds), as one wants it who would rather refuse than answer late.
import { readFileSync } from "node:fs";
import { Agent, request as send } from "node:http";
import { availableParallelism } from "node:os";
import { example, processorSeconds, sleep, start } from "./service.mjs";

const [program, seconds = "60", times = "2"] = process.argv.slice(2);
const wantedMs = 50;
const memoryReturnsSeconds = 30;
const settings = { Work__QueueSeconds: "0.02" };

// Calls of solvers, which are what can overload a service: a check costs a tenth of one and waits for nothing.
const calls = ["handling/cornering", "handling/ride", "wear/diagnosis"].map((path) => ({ path: `/v1/${path}`, body: example(path === "wear/diagnosis" ? "wear-diagnosis" : path.split("/")[1]) }));

const service = await start([program], settings);
const agent = new Agent({ keepAlive: true, maxSockets: Infinity, maxFreeSockets: 256 });
const residentMib = () => Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${service.pid}/status`, "utf8"))[1]) / 1024;

function ask(i) {
  const { path, body } = calls[i % calls.length];
  const begun = performance.now();
  return new Promise((resolve) => {
    const call = send({ host: "127.0.0.1", port: service.port, agent, method: "POST", path, headers: { "content-type": "application/json", "content-length": body.length } }, (response) => {
      response.resume();
      response.on("end", () => resolve({ status: response.statusCode, retryAfter: response.headers["retry-after"], ms: performance.now() - begun }));
    });
    call.on("error", (error) => resolve({ status: error.code, ms: performance.now() - begun }));
    call.end(body);
  });
}

/** Requests a second that would keep every processor busy: by the processor time of one, which does not hang on what else the machine does. */
async function capacity(count) {
  const begun = processorSeconds(service.pid);
  for (let i = 0; i < count; i++) await ask(i);
  return (availableParallelism() * count) / (processorSeconds(service.pid) - begun);
}

const at = (sorted, share) => sorted[Math.floor((sorted.length - 1) * share)] ?? NaN;

await capacity(300);
const perSecond = await capacity(900);
await sleep(1000);
const before = residentMib();
let most = before;

const rate = perSecond * Number(times);
const begun = performance.now();
const answers = [];
for (let sent = 0; performance.now() - begun < seconds * 1000; await sleep(1)) {
  const due = Math.floor(((performance.now() - begun) / 1000) * rate);
  for (; sent < due; sent++) answers.push(ask(sent));
  if (sent % 64 === 0) most = Math.max(most, residentMib());
}
const all = await Promise.all(answers);
await sleep(memoryReturnsSeconds * 1000);
const after = residentMib();

const accepted = all.filter((one) => one.status === 200).map((one) => one.ms).sort((a, b) => a - b);
const refused = all.filter((one) => (one.status === 503 || one.status === 429) && /^\d+$/.test(one.retryAfter ?? ""));
const refusedMs = refused.map((one) => one.ms).sort((a, b) => a - b);
const otherCount = all.length - accepted.length - refused.length;
console.log(`${perSecond.toFixed(0)} a second would keep ${availableParallelism()} processors busy; ${all.length} sent at ${rate.toFixed(0)} a second`);
console.log(`accepted: ${accepted.length}, median ${at(accepted, 0.5).toFixed(1)} ms, 99 of 100 within ${at(accepted, 0.99).toFixed(1)} ms, slowest ${at(accepted, 1).toFixed(1)} ms`);
console.log(`refused with Retry-After: ${refused.length}, median ${at(refusedMs, 0.5).toFixed(1)} ms, 99 of 100 within ${at(refusedMs, 0.99).toFixed(1)} ms; anything else: ${otherCount}`);
console.log(`resident: ${before.toFixed(0)} MiB before, ${most.toFixed(0)} MiB at most, ${after.toFixed(0)} MiB ${memoryReturnsSeconds} s later`);
service.end();
agent.destroy();
const isGood = accepted.length > 0 && refused.length > 0 && otherCount === 0 && at(accepted, 0.99) < wantedMs && after < Math.max(1.2 * before, before + 16);
if (!isGood) console.log(`wanted: accepted within ${wantedMs} ms (99 of 100), the rest refused, memory back to within a fifth`);
process.exit(isGood ? 0 : 1);
