// What the measuring scripts beside this one share: a service started and ended, its processor time and memory, and requests by several connections at once.
import { spawn, execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import net from "node:net";

export const connections = 8;

const ticksPerSecond = Number(execFileSync("getconf", ["CLK_TCK"]));

/** The request of a call, out of api/examples. */
export const example = (name) => readFileSync(new URL(`../../api/examples/${name}.request.json`, import.meta.url));

/** What the image sets of its runtime. */
const asShipped = { DOTNET_GCgen0size: /DOTNET_GCgen0size=(\w+)/.exec(readFileSync(new URL("../../Dockerfile", import.meta.url), "utf8"))[1] };

/** Settings with which no request is refused because a busy machine computes slowly. */
export const patient = { Work__DeadlineSeconds: "600", Work__QueueSeconds: "600", Work__DelaySeconds: "600" };

export const sleep = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

export const median = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];

/** A port nobody listens at. */
function freePort() {
  return new Promise((resolve) => {
    const listener = net.createServer().listen(0, "127.0.0.1", () => {
      const { port } = listener.address();
      listener.close(() => resolve(port));
    });
  });
}

/** Asks over a connection of its own whether the service takes requests, without what a client library does beside. */
function isReady(port) {
  return new Promise((resolve) => {
    const socket = net.connect(port, "127.0.0.1", () => socket.write("GET /health/ready HTTP/1.1\r\nHost: test\r\nConnection: close\r\n\r\n"));
    socket.on("data", (piece) => {
      resolve(piece.latin1Slice(0, 12) === "HTTP/1.1 200");
      socket.destroy();
    });
    socket.on("error", () => resolve(false));
  });
}

/** Starts the service as the image does, as a command and its arguments, and waits until it takes requests: when it was begun, ms since 1970, stands in begunAt, how long that took in readyMs. */
export async function start([program, ...args], settings = {}) {
  const port = await freePort();
  const begun = performance.now();
  const service = spawn(program, [...args, "--urls", `http://127.0.0.1:${port}`], { env: { ...asShipped, ...process.env, ...settings }, stdio: ["ignore", "pipe", "inherit"] });
  service.stdout.resume();
  while (!(await isReady(port))) {
    if (service.exitCode !== null) throw new Error(`the service ended with ${service.exitCode}`);
    if (performance.now() - begun > 60_000) {
      service.kill();
      throw new Error("the service did not become ready within a minute");
    }
    await sleep(2);
  }
  return { port, pid: service.pid, process: service, begunAt: performance.timeOrigin + begun, readyMs: performance.now() - begun, end: () => service.kill() };
}

/** Processor time a process has used, seconds (proc(5), fields utime and stime). */
export function processorSeconds(pid) {
  const fields = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1].split(" ");
  return (Number(fields[11]) + Number(fields[12])) / ticksPerSecond;
}

/** Resident memory of a process now and at its greatest, MiB (proc(5), VmRSS and VmHWM). */
export function residentMib(pid) {
  const status = readFileSync(`/proc/${pid}/status`, "utf8");
  const of = (name) => Number(new RegExp(`^${name}:\\s+(\\d+)`, "m").exec(status)[1]) / 1024;
  return { now: of("VmRSS"), greatest: of("VmHWM") };
}

/**
 * Asks over several connections, each one request after the other, for some seconds. Returns the number answered with 200, the slowest of them, ms, and the server's
 * processor time a request, µs.
 */
export async function ask({ port, pid }, path, body, seconds, headers = {}) {
  const lines = Object.entries({ Host: "test", "Content-Type": "application/json", "Content-Length": body.length, ...headers }).map(([name, value]) => `${name}: ${value}\r\n`);
  const request = Buffer.concat([Buffer.from(`POST ${path} HTTP/1.1\r\n${lines.join("")}\r\n`), body]);
  const before = processorSeconds(pid);
  const until = performance.now() + seconds * 1000;
  let answered = 0;
  let slowestMs = 0;
  const one = () =>
    new Promise((resolve, reject) => {
      const socket = net.connect(port, "127.0.0.1");
      socket.setNoDelay(true);
      let missing = 0;
      let held = Buffer.alloc(0);
      let sent = 0;
      const send = () => {
        sent = performance.now();
        socket.write(request);
      };
      socket.on("error", reject);
      socket.on("connect", send);
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
        slowestMs = Math.max(slowestMs, performance.now() - sent);
        if (performance.now() < until) return send();
        socket.destroy();
        resolve();
      });
    });
  await Promise.all(Array.from({ length: connections }, one));
  return { answered, slowestMs, processorUs: ((processorSeconds(pid) - before) / answered) * 1e6 };
}
