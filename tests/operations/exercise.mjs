// Starts the service and asks the calls that matter for some seconds each; what the runtime counts meanwhile is the profile of the native build (.ci/profile.sh).
//   node tests/operations/exercise.mjs J/SetupService.Api [seconds a call]
import { once } from "node:events";
import { ask, example, patient, start } from "./service.mjs";

const [program, seconds = "3"] = process.argv.slice(2);
const calls = {
  "fitment/check": "fitment-check", "fitment/car-check": "fitment-car-check", "handling/cornering": "cornering", "geometry/travel-sweep": "travel-sweep", "handling/ride": "ride",
  "wear/diagnosis": "wear-diagnosis", "handling/camber-target": "camber-target", "handling/what-if": "what-if", plans: "plan", "wear/forecast": "wear-forecast", "tyres/ranking": "tyre-ranking",
};
const service = await start([program], { Shutdown__UnreadySeconds: "0", ...patient });
try {
  for (const [path, body] of Object.entries(calls)) console.log(`${path}: ${(await ask(service, `/v1/${path}`, example(body), Number(seconds))).answered} answered`);
} finally {
  // The counts are written when the process ends.
  service.end();
  await once(service.process, "exit");
}
