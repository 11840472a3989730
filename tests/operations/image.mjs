// The image as it ships, laid out at ROOT (.ci/image.sh does that): what is in it, and the service started from it with its own user and a read-only root: when it is ready, what it
// answers, its health command, its memory idle and under load, and how it ends. Exits 1 where something is not as it must be; times are told and do not fail.
//   node tests/operations/image.mjs ROOT COMMIT [seconds of load a call]
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, lstatSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { ask, example, patient, residentMib, sleep, start } from "./service.mjs";

const [root, commit, seconds = "3"] = process.argv.slice(2);
const command = ["bash", fileURLToPath(new URL("../../.ci/start-image.sh", import.meta.url)), root];
const mib = (bytes) => (bytes / 1024 / 1024).toFixed(1);
const calls = { "fitment/check": "fitment-check", "handling/cornering": "cornering", "geometry/travel-sweep": "travel-sweep", "handling/ride": "ride", "wear/diagnosis": "wear-diagnosis" };

function must(holds, what) {
  if (!holds) throw new Error(what);
  console.log(what);
}

/** A process is over once it is gone or waits for its parent. */
const isOver = (pid) => !existsSync(`/proc/${pid}`) || readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1].startsWith("Z");

const files = readdirSync(root, { recursive: true }).filter((file) => !/^(proc|dev|sys)\//.test(file)).map((file) => join(root, file)).filter((file) => lstatSync(file).isFile());
const bytes = files.reduce((sum, file) => sum + statSync(file).size, 0);
must(files.every((file) => !/\.(dbg|pdb|debug)$/.test(file)), `no symbols among its ${files.length} files`);
must(!execFileSync("readelf", ["-S", "-W", join(root, "app/SetupService.Api")]).toString().includes(".debug_"), "none in the program");
must(files.every((file) => !/\/(ba|da|z)?sh$/.test(file)), "no shell");
must(files.every((file) => !(statSync(file).mode & 0o6000) && statSync(file).uid === 0), "no file that lends rights, none that its user owns");
console.log(`${mib(bytes)} MiB of files, the program ${mib(statSync(join(root, "app/SetupService.Api")).size)}`);
const bill = JSON.parse(readFileSync(join(root, "app/sbom.cdx.json")));
const shipped = (name) => bill.components.some((component) => component.name === name && component.scope === "required");
must(shipped("FluentValidation") && shipped("Microsoft.NETCore.App.Runtime.linux-x64") && bill.components.some((component) => component.purl.startsWith("pkg:deb/")), `${bill.components.length} parts listed`);
must(readFileSync(join(root, "app/THIRD-PARTY-NOTICES.txt"), "utf8").includes("Serilog"), "notices of third parties");

const ready = [];
const folder = mkdtempSync(join(tmpdir(), "image-"));
for (let i = 0; i < 5; i++) {
  const file = join(folder, `${i}`);
  const service = await start(command, { LAID_OUT: file });
  const laidOutMs = 1000 * Number(readFileSync(file, "utf8").replace(",", ".")) - service.begunAt;
  ready.push({ program: service.readyMs - laidOutMs, whole: service.readyMs });
  service.end();
  while (!isOver(service.pid)) await sleep(50);
}
rmSync(folder, { recursive: true });
const times = (of) => ready.map((one) => one[of].toFixed(0)).join(", ");
console.log(`ready in ${times("program")} ms from when the image lies there and is entered (at most 100 is wanted); ${times("whole")} ms with its namespace and mounts`);

const service = await start(command, patient);
const url = `http://127.0.0.1:${service.port}`;
try {
  const status = readFileSync(`/proc/${service.pid}/status`, "utf8");
  must(/^Uid:\s+1654\s+1654/m.test(status) && /^CapEff:\s+0+$/m.test(status) && /^NoNewPrivs:\s+1$/m.test(status), "runs as user 1654 without rights");
  must(readFileSync(`/proc/${service.pid}/mounts`, "utf8").split("\n").some((line) => / \/ \S+ ro,/.test(line)), "its root is read-only");
  const health = spawnSync(command[0], [...command.slice(1), "health", url], { encoding: "utf8" });
  must(health.status === 0, `health command: ${health.stdout.trim()}`);
  const version = await (await fetch(`${url}/version`)).json();
  must(version.commit === commit, `/version says commit ${version.commit}`);
  await sleep(1000);
  const idle = residentMib(service.pid).now;
  for (const [path, body] of Object.entries(calls)) {
    const { answered } = await ask(service, `/v1/${path}`, example(body), Number(seconds));
    must(answered > 0, `${path}: ${answered} answered`);
  }
  console.log(`resident idle ${idle.toFixed(1)} MiB (at most 64 is wanted), greatest under load of eight connections ${residentMib(service.pid).greatest.toFixed(1)} MiB (at most 128)`);
} finally {
  service.end();
}
const asked = performance.now();
while (!isOver(service.pid) && performance.now() - asked < 10_000) await sleep(20);
must(isOver(service.pid), `ends ${((performance.now() - asked) / 1000).toFixed(1)} s after SIGTERM`);
const health = spawnSync(command[0], [...command.slice(1), "health", url], { encoding: "utf8" });
must(health.status === 1, `health command after that: ${health.stdout.trim()}`);
