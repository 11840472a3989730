// What keys, limits, a JSON line for every request and metrics cost a fitment check: the service with all of them beside the same with none, in one run,
// in paired slices of eight connections. Prints the processor time of the one by that of the other for a request.
//   node tests/operations/overhead.mjs /some/folder/SetupService.Api [slices] [seconds]
import { spawn, execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import net from "node:net";

const [program, slices = "7", seconds = "3"] = process.argv.slice(2);
const body = readFileSync(new URL("../../api/examples/fitment-check.request.json", import.meta.url));
const ticksPerSecond = Number(execFileSync("getconf", ["CLK_TCK"]));
const connections = 8;

function makeKey() {
  const lines = execFileSync(program, ["new-key", "bench"]).toString().split("\n");
  const settings = Object.fromEntries(lines.filter((line) => line.startsWith("Access__")).map((line) => [line.slice(0, line.indexOf("=")), line.slice(line.indexOf("=") + 1)]));
  return { key: lines[1].trim(), settings };
}

/** A port nobody listens at. */
function freePort() {
  return new Promise((resolve) => {
    const listener = net.createServer().listen(0, "127.0.0.1", () => {
      const { port } = listener.address();
      listener.close(() => resolve(port));
    });
  });
}

async function start(port, settings) {
  const service = spawn(program, ["--urls", `http://127.0.0.1:${port}`], { env: { ...process.env, ...settings }, stdio: ["ignore", "pipe", "inherit"] });
  service.stdout.resume();
  for (let attempt = 0; attempt < 200; attempt++) {
    try {
      if ((await fetch(`http://127.0.0.1:${port}/health/ready`)).ok) return service;
    } catch {
      // Not listening yet.
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error("the service did not become ready within 10 s");
}

/** Processor time a process has used, seconds (proc(5), fields utime and stime). */
function processorSeconds(pid) {
  const fields = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1].split(" ");
  return (Number(fields[11]) + Number(fields[12])) / ticksPerSecond;
}

/** Asks over several connections, each one request after the other, for some seconds; returns the number answered with 200. */
function ask(port, key, duration) {
  const head = `POST /v1/fitment/check HTTP/1.1\r\nHost: test\r\nContent-Type: application/json\r\n${key ? `Api-Key: ${key}\r\n` : ""}Content-Length: ${body.length}\r\n\r\n`;
  const request = Buffer.concat([Buffer.from(head), body]);
  const until = performance.now() + duration * 1000;
  let answered = 0;
  const one = () =>
    new Promise((resolve, reject) => {
      const socket = net.connect(port, "127.0.0.1");
      socket.setNoDelay(true);
      let missing = 0;
      let held = Buffer.alloc(0);
      socket.on("error", reject);
      socket.on("connect", () => socket.write(request));
      socket.on("data", (piece) => {
        if (missing === 0) {
          held = held.length ? Buffer.concat([held, piece]) : piece;
          const end = held.indexOf("\r\n\r\n");
          if (end < 0) return;
          const text = held.latin1Slice(0, end);
          if (!text.startsWith("HTTP/1.1 200")) return reject(new Error(text));
          missing = Number(/content-length: (\d+)/i.exec(text)[1]) - (held.length - end - 4);
          held = Buffer.alloc(0);
        } else {
          missing -= piece.length;
        }
        if (missing > 0) return;
        answered++;
        if (performance.now() < until) return socket.write(request);
        socket.destroy();
        resolve();
      });
    });
  return Promise.all(Array.from({ length: connections }, one)).then(() => answered);
}

const { key, settings } = makeKey();
const [plainPort, fullPort] = [await freePort(), await freePort()];
const plain = await start(plainPort, {});
const full = await start(fullPort, {
  ...settings, Log__Format: "Json", Log__EveryRequest: "true", Telemetry__Metrics: "true", Limits__BurstUnits: "1000000000", Limits__SustainedUnits: "1000000000000",
});
try {
  await ask(plainPort, null, 2);
  await ask(fullPort, key, 2);
  const ratios = [];
  for (let slice = 0; slice < Number(slices); slice++) {
    const cost = {};
    for (const [name, service, port, with_] of slice % 2 ? [["full", full, fullPort, key], ["plain", plain, plainPort, null]] : [["plain", plain, plainPort, null], ["full", full, fullPort, key]]) {
      const before = processorSeconds(service.pid);
      const answered = await ask(port, with_, Number(seconds));
      cost[name] = ((processorSeconds(service.pid) - before) / answered) * 1e6;
    }
    ratios.push(cost.plain / cost.full);
    console.log(`slice ${slice + 1}: plain ${cost.plain.toFixed(1)} µs, with everything ${cost.full.toFixed(1)} µs of processor a request, ${(cost.plain / cost.full).toFixed(3)} of the plain rate`);
  }
  const sorted = ratios.toSorted((a, b) => a - b);
  console.log(`median ${sorted[Math.floor(sorted.length / 2)].toFixed(3)} (at least 0.9 is wanted)`);
} finally {
  plain.kill();
  full.kill();
}
