// Sends bad and nearly bad requests, made from the contract, to a service and judges every answer. Exits 1 where one is wrong.
//   node tests/hardening/run.mjs URL [--count 5000] [--seed 1] [--at INDEX] [--deadline SECONDS] [--slack SECONDS] [--connections 6] [--pid PID]
// --at sends one request again and prints it and its answer. --deadline is the service's Work:DeadlineSeconds; an answer may take that, the wait for a turn and --slack.
import { readFileSync } from "node:fs";
import { Agent, request as send } from "node:http";
import { parseArgs } from "node:util";
import { calls } from "./contract.mjs";
import { faultsOf, mostOfALine } from "./judge.mjs";
import { makeRequest } from "./requests.mjs";

const texts = Object.fromEntries(["count", "seed", "at", "deadline", "slack", "connections", "pid"].map((name) => [name, { type: "string" }]));
const { values, positionals } = parseArgs({ options: texts, allowPositionals: true });
const url = new URL(positionals[0]);
const { count = 5000, seed = 1, deadline = 20, slack = 30, connections = 6 } = Object.fromEntries(Object.entries(values).map(([name, text]) => [name, Number(text)]));
const queueSeconds = 2;
const longestSeconds = deadline + queueSeconds + slack;
const faultsShown = 40;
const agent = new Agent({ keepAlive: true, maxSockets: connections });

/** The answer to a request; an error where none comes. A connection kept from before may just have been closed by the service: then over a new one, once. (A request that waited for a connection is not told that it was used before.) */
function ask(request, own = agent) {
  const start = performance.now();
  return new Promise((resolve, reject) => {
    const headers = { ...request.headers, ...(request.body ? { "content-length": request.body.length } : {}) };
    const call = send({ host: url.hostname, port: url.port, agent: own, method: request.method, path: escaped(request.path), headers }, (response) => {
      const pieces = [];
      response.on("data", (piece) => pieces.push(piece));
      response.on("end", () => resolve({ status: response.statusCode, headers: response.headers, body: Buffer.concat(pieces), seconds: (performance.now() - start) / 1000 }));
      response.on("error", reject);
    });
    call.setTimeout(longestSeconds * 1000, () => call.destroy(new Error(`no answer within ${longestSeconds} s`)));
    call.on("error", (error) => (own !== false && ["ECONNRESET", "EPIPE"].includes(error.code) ? ask(request, false).then(resolve, reject) : reject(error)));
    call.end(request.body ?? undefined);
  });
}

/** The path without what the client would not send at all. */
const escaped = (path) => path.replace(/[^\x21-\x7e]/g, encodeURIComponent);

/** What is wrong with the answer to a request. */
async function judged(request) {
  try {
    const answer = await ask(request);
    return { answer, faults: faultsOf(request, answer, longestSeconds) };
  } catch (error) {
    // A body or a first line far too large may be refused and the connection closed while the rest is still being sent.
    const isCutOff = ["ECONNRESET", "EPIPE"].includes(error.code) && ((request.body?.length ?? 0) > 262_144 || request.path.length > mostOfALine);
    return { answer: null, faults: isCutOff ? [] : [`no answer: ${error.message}`] };
  }
}

const residentMib = () => (values.pid ? Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${values.pid}/status`, "utf8"))[1]) / 1024 : NaN);

async function sendOne(index) {
  const request = makeRequest(seed, index);
  console.log(`${request.method} ${request.path}\n${JSON.stringify(request.headers)}\n${request.body?.toString("utf8").slice(0, 20_000) ?? ""}\n`);
  const { answer, faults } = await judged(request);
  console.log(answer && `${answer.status} ${JSON.stringify(answer.headers)}\n${answer.body.toString("utf8").slice(0, 20_000)}`);
  console.log(faults);
}

async function sendAll() {
  const statuses = {};
  const refused = {};
  const slowest = { seconds: 0 };
  const before = residentMib();
  let next = 0;
  let faulty = 0;
  async function sendNext() {
    while (next < count) {
      const request = makeRequest(seed, next++);
      const { answer, faults } = await judged(request);
      const status = answer?.status ?? "none";
      statuses[status] = (statuses[status] ?? 0) + 1;
      if (answer && answer.seconds > slowest.seconds) Object.assign(slowest, { seconds: answer.seconds, index: request.index, name: request.call.name, status });
      refused[request.call.name] ??= [0, 0];
      refused[request.call.name][status === 200 ? 0 : 1]++;
      if (faults.length && ++faulty <= faultsShown) console.log(`request ${request.index} (${request.mode}), ${request.method} ${request.path.slice(0, 100)}: ${faults.slice(0, 3).join("; ")}`);
    }
  }
  const start = performance.now();
  await Promise.all(Array.from({ length: connections }, sendNext));
  const unasked = calls.filter((call) => !refused[call.name]).map((call) => call.name);
  console.log(`${count} requests of seed ${seed} in ${((performance.now() - start) / 1000).toFixed(0)} s: ${Object.entries(statuses).map(([status, times]) => `${times} × ${status}`).join(", ")}`);
  console.log(`slowest: ${slowest.seconds.toFixed(2)} s, ${slowest.name} (request ${slowest.index}, ${slowest.status})`);
  if (values.pid) console.log(`resident: ${before.toFixed(0)} MiB before, ${residentMib().toFixed(0)} MiB after`);
  if (unasked.length) console.log(`never asked: ${unasked.join(", ")}`);
  console.log(faulty === 0 ? "every answer was as the contract says" : `${faulty} answers were wrong; see one again with --seed ${seed} --at INDEX`);
  return faulty === 0 && (unasked.length === 0 || count < 1000);
}

const isGood = values.at === undefined ? await sendAll() : await sendOne(Number(values.at)).then(() => true);
agent.destroy();
process.exitCode = isGood ? 0 : 1;
