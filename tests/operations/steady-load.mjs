// Asks for fitment checks for some seconds, kills a process after a third of them, and says how many were answered. Exits 1 where one was not.
//   node steady-load.mjs URL SECONDS PID
import { readFile } from "node:fs/promises";

const [url, seconds, pid] = process.argv.slice(2);
const body = await readFile(new URL("../../api/examples/fitment-check.request.json", import.meta.url));
const until = performance.now() + seconds * 1000;
const counts = { answered: 0, lost: 0 };
let wasKilled = false;
let afterKill = 0;

setTimeout(() => {
  process.kill(Number(pid), "SIGKILL");
  wasKilled = true;
}, (seconds * 1000) / 3);

async function ask() {
  while (performance.now() < until) {
    try {
      const response = await fetch(`${url}/v1/fitment/check`, { method: "POST", headers: { "content-type": "application/json" }, body });
      await response.arrayBuffer();
      if (!response.ok) throw new Error(`${response.status}`);
      counts.answered++;
      afterKill += wasKilled ? 1 : 0;
    } catch (fault) {
      counts.lost++;
      console.error(`lost: ${fault.message}`);
    }
  }
}

await Promise.all(Array.from({ length: 8 }, ask));
console.log(`${counts.answered} answered, ${afterKill} of them after one of two replicas was killed; ${counts.lost} lost`);
process.exit(counts.lost === 0 && afterKill > 0 ? 0 : 1);
