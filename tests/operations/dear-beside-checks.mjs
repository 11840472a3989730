// Checks by one client while another keeps 40 dear requests in flight and hangs up on some of them: the time of the checks, what became of the dear ones, and what the
// service still works at half a second after everybody has gone. The last line is the verdict on the checks; exits 1 where it is "failed".
//   node tests/operations/dear-beside-checks.mjs URL PID [seconds]
import { readFileSync } from "node:fs";
import { execFileSync } from "node:child_process";
import { loadavg } from "node:os";

const [url, pid, seconds = "10"] = process.argv.slice(2);
const example = (name) => JSON.parse(readFileSync(new URL(`../../api/examples/${name}.request.json`, import.meta.url)));
const dear = [];
const sweep = example("travel-sweep");
sweep.travelMm = { from: -60, to: 60, step: 0.025 };
sweep.vehicle[sweep.axle].suspension.points.pointErrorMm = 1;
dear.push(["geometry/travel-sweep", sweep]);
const cornering = example("cornering-sweep");
cornering.lateralG = { from: 0.001, to: 1, step: 0.001 };
dear.push(["handling/cornering-sweep", cornering]);
const envelope = example("envelope");
envelope.longitudinalG = { from: -1, to: 0.4, step: 0.0071 };
dear.push(["handling/envelope", envelope]);
dear.push(["plans", example("plan")]);

const ticks = Number(execFileSync("getconf", ["CLK_TCK"]));
const processorSeconds = () => {
  const fields = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1].split(" ");
  return (Number(fields[11]) + Number(fields[12])) / ticks;
};
const post = (path, body, signal) => fetch(`${url}/v1/${path}`, { method: "POST", headers: { "content-type": "application/json" }, body, signal });
const until = performance.now() + seconds * 1000;
const became = {};

async function askDear(i) {
  for (let turn = i; performance.now() < until; turn++) {
    const [path, document] = dear[turn % dear.length];
    const gone = new AbortController();
    const timer = turn % 4 === 0 ? setTimeout(() => gone.abort(), 300) : undefined;
    let status;
    try {
      const response = await post(path, JSON.stringify(document), gone.signal);
      await response.arrayBuffer();
      status = response.status;
      if (status === 503) await new Promise((resolve) => setTimeout(resolve, 200));
    } catch {
      status = "gone";
    }
    clearTimeout(timer);
    became[status] = (became[status] ?? 0) + 1;
  }
}

let refusedCount = 0;
async function askChecks(times) {
  const body = readFileSync(new URL("../../api/examples/fitment-check.request.json", import.meta.url));
  while (performance.now() < until) {
    const start = performance.now();
    const response = await post("fitment/check", body);
    await response.arrayBuffer();
    if (response.status === 200) times.push(performance.now() - start);
    else if (response.status === 503) refusedCount++;
    else throw new Error(`a check was answered with ${response.status}`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

for (let i = 0; i < 50; i++) await (await post("fitment/check", readFileSync(new URL("../../api/examples/fitment-check.request.json", import.meta.url)))).arrayBuffer();
const times = [];
await Promise.all([...Array.from({ length: 40 }, (_, i) => askDear(i)), askChecks(times), askChecks(times)]);
times.sort((a, b) => a - b);
const at = (share) => times[Math.floor((times.length - 1) * share)].toFixed(1);
console.log(`${times.length} checks: median ${at(0.5)} ms, 99 of 100 within ${at(0.99)} ms, slowest ${at(1)} ms; ${refusedCount} refused`);
console.log(`dear requests: ${JSON.stringify(became)}`);

// Everybody hangs up at once.
const last = new AbortController();
const calls = Array.from({ length: 40 }, (_, i) => post(dear[i % dear.length][0], JSON.stringify(dear[i % dear.length][1]), last.signal).catch(() => {}));
await new Promise((resolve) => setTimeout(resolve, 500));
last.abort();
await Promise.all(calls);
await new Promise((resolve) => setTimeout(resolve, 50));
const before = processorSeconds();
await new Promise((resolve) => setTimeout(resolve, 500));
console.log(`from 50 ms after all hung up, ${(1000 * (processorSeconds() - before)).toFixed(0)} ms of processor in the next 500 ms`);
const isGood = Number(at(0.99)) < 100 && refusedCount === 0;
console.log(`verdict: ${isGood ? "passed" : "failed, checks within 100 ms (99 of 100) and none refused are wanted"} (load average ${loadavg()[0].toFixed(1)})`);
process.exit(isGood ? 0 : 1);
