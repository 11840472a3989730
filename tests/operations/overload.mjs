// Load at twice what the service can do for a minute, open loop: requests are sent by the clock, whether or not those before them are answered, each on a connection on
// which nothing is awaited, a new one where there is none. The time of an answer is counted from when its request was planned, so that one sent late counts as slow. What is
// accepted must be answered soon, the rest refused with 503 and Retry-After, health answered throughout, and memory must come back. Two loads, each with a service of its
// own: checks and markings alone, and these with solvers, which have half of the work. The last line is the verdict; exits 1 where a load failed, 2 where the machine was
// too busy to tell.
//   node tests/operations/overload.mjs /some/folder/SetupService.Api [seconds] [times of capacity] [checks|mixed]
// The service runs on the first processor and what sends on the second, so that neither takes the other's time; capacity is measured there too, in the same run.
// The service is started with a short wait for a turn (Work:QueueSeconds), as one wants it who would rather refuse than answer late; else as it comes.
import { execFileSync } from "node:child_process";
import { loadavg } from "node:os";
import net from "node:net";
import { example, patient, processorSeconds, residentMib, sleep, start } from "./service.mjs";

const [program, seconds = "60", times = "2", only] = process.argv.slice(2);
const settings = { Work__QueueSeconds: "0.02", Caps__Connections: "12000" };
const wantedMs = 50;
const quietSeconds = 25;
const memoryReturnsSeconds = 60;
const mostConnections = 10_000;

// So many of each call in a hundred.
const loads = {
  checks: { "fitment/check": 85, decode: 15 },
  mixed: { "fitment/check": 80, decode: 14, "handling/cornering": 2, "handling/ride": 2, "wear/diagnosis": 2 },
};

function requestOf(name) {
  if (name === "decode") return Buffer.from("GET /v1/tyres/decode?marking=225/45R17%2094W%20XL HTTP/1.1\r\nHost: test\r\n\r\n");
  const body = example(name.replace("handling/", "").replace("/", "-"));
  return Buffer.concat([Buffer.from(`POST /v1/${name} HTTP/1.1\r\nHost: test\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n`), body]);
}

/** The kinds of a load in the order in which they are sent over and over: the next is always the one that is furthest behind its share. */
function orderOf(shares) {
  const kinds = Object.entries(shares).map(([name, share]) => ({ name, share, request: requestOf(name), acceptedMs: [], refused: 0, sent: 0 }));
  return Array.from({ length: 100 }, (_, i) => {
    const next = kinds.toSorted((a, b) => b.share * (i + 1) - 100 * b.sent - (a.share * (i + 1) - 100 * a.sent))[0];
    next.sent++;
    return next;
  });
}

/** Connections to a service, each with one request at a time. */
class Connections {
  idle = [];
  count = 0;
  greatest = 0;

  constructor(port) {
    this.port = port;
  }

  get isFull() {
    return this.idle.length === 0 && this.count >= mostConnections;
  }

  /** Sends a request; done is told the status of its answer, or what went wrong, and whether it says when to come again. */
  send(request, done) {
    const connection = this.idle.pop() ?? this.#open();
    connection.done = done;
    connection.socket.write(request);
  }

  closeIdle() {
    for (const { socket } of this.idle.splice(0)) socket.destroy();
  }

  #open() {
    const connection = { socket: net.connect({ port: this.port, host: "127.0.0.1", noDelay: true }), done: null, missing: 0, held: null, status: 0, retryAfter: false };
    this.greatest = Math.max(this.greatest, ++this.count);
    let fault = "closed";
    connection.socket.on("data", (piece) => this.#read(connection, piece));
    connection.socket.on("error", (error) => (fault = error.code));
    connection.socket.on("close", () => {
      this.count--;
      const place = this.idle.indexOf(connection);
      if (place >= 0) this.idle.splice(place, 1);
      connection.done?.(fault, false);
    });
    return connection;
  }

  #read(connection, piece) {
    if (connection.missing === 0) {
      const bytes = connection.held ? Buffer.concat([connection.held, piece]) : piece;
      const end = bytes.indexOf("\r\n\r\n");
      connection.held = end < 0 ? bytes : null;
      if (end < 0) return;
      const head = bytes.latin1Slice(0, end);
      connection.status = Number(head.slice(9, 12));
      connection.retryAfter = /\r\nretry-after: \d+/i.test(head);
      connection.missing = Number(/\r\ncontent-length: (\d+)/i.exec(head)[1]) - (bytes.length - end - 4);
    } else {
      connection.missing -= piece.length;
    }
    if (connection.missing > 0) return;
    const done = connection.done;
    connection.done = null;
    this.idle.push(connection);
    done(connection.status, connection.retryAfter);
  }
}

const at = (sorted, share) => sorted[Math.floor((sorted.length - 1) * share)] ?? NaN;
const sorted = (values) => values.sort((a, b) => a - b);
const told = (ms) => `median ${at(ms, 0.5).toFixed(1)} ms, 99 of 100 within ${at(ms, 0.99).toFixed(1)} ms, slowest ${at(ms, 1).toFixed(1)} ms`;

/** Has connections send one request after the other for some seconds; answered requests a second of the service's processor. */
async function saturate(service, connections, order, length, width = 64) {
  const begun = processorSeconds(service.pid);
  const until = performance.now() + length * 1000;
  let sent = 0;
  let answered = 0;
  await Promise.all(Array.from({ length: width }, () => new Promise((resolve) => {
    const next = (status) => {
      answered += status === 200 ? 1 : 0;
      if (performance.now() < until) connections.send(order[sent++ % order.length].request, next);
      else resolve();
    };
    next();
  })));
  return answered / (processorSeconds(service.pid) - begun);
}

/** Starts a service and keeps it busy until it is as quick as it gets. */
async function warm(order, settings) {
  const service = await start(["taskset", "-c", "0", program], settings);
  const connections = new Connections(service.port);
  let perSecond = 0;
  for (let round = 0, rising = 0; (round < 8 || rising < 3) && round < 20; round++) {
    const now = await saturate(service, connections, order, 3);
    rising = now > 1.03 * perSecond ? 0 : rising + 1;
    perSecond = Math.max(perSecond, now);

    // A compiler that makes it quicker has the same processor.
    await sleep(1000);
  }

  // What refuses is to be as quick too; and the callers' connections stand, as those of callers who come again.
  await saturate(service, connections, order, 3, 2000);
  return { service, connections, perSecond };
}

async function run(name) {
  const order = orderOf(loads[name]);
  const kinds = [...new Set(order)];
  const health = { name: "health", request: Buffer.from("GET /health/live HTTP/1.1\r\nHost: test\r\n\r\n"), acceptedMs: [], refused: 0 };
  const others = {};
  // What it can do is told by one that refuses nothing.
  const { service: tireless, perSecond } = await warm(order, patient);
  tireless.end();
  const { service, connections } = await warm(order, settings);
  await sleep(quietSeconds * 1000);
  const before = residentMib(service.pid).now;
  const rate = perSecond * Number(times);
  console.log(`${name}: capacity ${perSecond.toFixed(0)} a second on one processor, ${rate.toFixed(0)} a second sent (load average ${loadavg()[0].toFixed(1)})`);

  const count = (what) => (others[what] = (others[what] ?? 0) + 1);
  const send = (kind, planned) => {
    if (connections.isFull) return count("no connection left");
    connections.send(kind.request, (status, hasRetryAfter) => {
      if (status === 200) kind.acceptedMs.push(performance.now() - planned);
      else if (status === 503 && hasRetryAfter) kind.refused++;
      else count(status);
    });
  };
  const lateMs = [];
  const usedBySender = process.cpuUsage();
  const usedByService = processorSeconds(service.pid);
  let most = before;
  let sent = 0;
  let looks = 0;
  const begun = performance.now();
  for (let ms = 0; ms < seconds * 1000; ms = performance.now() - begun) {
    for (const due = Math.floor((ms / 1000) * rate); sent < due; sent++) {
      const planned = begun + (sent / rate) * 1000;
      if (sent % 16 === 0) lateMs.push(performance.now() - planned);
      send(order[sent % order.length], planned);
    }
    if (ms > looks * 200) {
      looks++;
      most = Math.max(most, residentMib(service.pid).now);
      send(health, performance.now());
    }
    await new Promise(setImmediate);
  }
  const took = (performance.now() - begun) / 1000;
  const { user, system } = process.cpuUsage(usedBySender);
  const serviceShare = (processorSeconds(service.pid) - usedByService) / took;
  for (const until = performance.now() + 10_000; connections.idle.length < connections.count && performance.now() < until; ) await sleep(10);
  if (connections.idle.length < connections.count) others.unanswered = connections.count - connections.idle.length;
  connections.closeIdle();

  const most1 = Math.max(1.2 * before, before + 16);
  let waited = 0;
  for (; waited < memoryReturnsSeconds && residentMib(service.pid).now > most1; waited++) await sleep(1000);
  const after = residentMib(service.pid).now;
  service.end();

  const acceptedMs = sorted(kinds.flatMap((kind) => kind.acceptedMs));
  const refused = kinds.reduce((sum, kind) => sum + kind.refused, 0);
  const late = at(sorted(lateMs), 0.99);
  console.log(`  ${sent} sent, 99 of 100 at most ${late.toFixed(1)} ms late, over at most ${connections.greatest} connections; the sender had ${((user + system) / 1e6 / took).toFixed(2)} of its processor, the service ${serviceShare.toFixed(2)} of its own (load average ${loadavg()[0].toFixed(1)})`);
  console.log(`  accepted: ${acceptedMs.length}, ${(acceptedMs.length / took / perSecond).toFixed(2)} of capacity, ${told(acceptedMs)}`);
  for (const kind of [...kinds, health]) console.log(`    ${kind.name}: ${kind.acceptedMs.length}, ${told(sorted(kind.acceptedMs))}; ${kind.refused} refused`);
  console.log(`  refused with Retry-After: ${refused}; anything else: ${JSON.stringify(others)}`);
  console.log(`  resident: ${before.toFixed(0)} MiB before, ${most.toFixed(0)} MiB at most, ${after.toFixed(0)} MiB ${waited} s after`);
  const faults = [
    acceptedMs.length === 0 && "nothing accepted",
    refused === 0 && "nothing refused",
    Object.keys(others).length > 0 && "requests neither answered nor refused",
    health.refused > 0 && "health refused",
    !(at(acceptedMs, 0.99) < wantedMs) && `99 of 100 accepted not within ${wantedMs} ms`,
    after > most1 && `memory not back to ${most1.toFixed(0)} MiB within ${memoryReturnsSeconds} s`,
  ].filter(Boolean);
  const isTooBusy = late > 10 || serviceShare < 0.9;
  return { text: `${name} ${faults.length === 0 ? "passed" : isTooBusy ? `not told, the machine was too busy (${faults.join("; ")})` : `failed (${faults.join("; ")})`}`, code: faults.length === 0 ? 0 : isTooBusy ? 2 : 1 };
}

execFileSync("taskset", ["-apc", "1", String(process.pid)]);
const verdicts = [];
for (const name of only ? [only] : Object.keys(loads)) verdicts.push(await run(name));
console.log(`verdict: ${verdicts.map((verdict) => verdict.text).join(", ")}`);
process.exit(verdicts.find((verdict) => verdict.code === 1)?.code ?? Math.max(...verdicts.map((verdict) => verdict.code)));
