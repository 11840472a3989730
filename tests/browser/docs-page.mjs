// Opens /docs in a headless Chromium: it is quick, asks nobody else, does the main job, draws, makes every call with its example, and is as wide as the window.
// docs-page.mjs SERVICE [FOLDER]: where to keep pictures. Exits 0 and says so where there is no Chromium.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { Browser, chromium } from "./chromium.mjs";

const [service, folder] = process.argv.slice(2);
const mostProcessorSeconds = 2;
const contract = JSON.parse(await readFile(new URL("../../api/openapi.json", import.meta.url)));
const names = Object.values(contract.paths).flatMap((methods) => Object.values(methods).map((call) => call.operationId));
const kept = async (file) => JSON.parse(await readFile(new URL(`../../api/examples/${file}`, import.meta.url)));

const path = chromium();
if (!path) {
  console.log("skipped: no chromium on this machine, so no browser opens the page");
  process.exit(0);
}

/** Opens a call's form, sends it as it stands, and gives what is then shown. */
async function send(browser, name) {
  await browser.value(`(() => { const call = document.querySelector("#${name}"); call.open = true; return new Promise((done) => setTimeout(done)); })()`);
  await browser.until(`!!document.querySelector("#${name} button")`);
  await browser.value(`document.querySelector("#${name} button").click()`);
  await browser.until(`document.querySelector("#${name} .result").dataset.done === "true" && [...document.querySelectorAll("#${name} img")].every((img) => img.complete)`);
  return browser.value(`(() => {
    const result = document.querySelector("#${name} .result");
    const of = (selector) => result.querySelector(selector)?.textContent ?? null;
    return { good: of(".good"), bad: of(".bad"), summary: of(".summary"), text: of("pre"), pictureWidth: result.querySelector("img")?.naturalWidth ?? null, alt: result.querySelector("img")?.alt ?? null };
  })()`);
}

/** Seconds of processor the page's own thread has taken. */
async function processorSeconds(browser) {
  const { metrics } = await browser.send("Performance.getMetrics");
  return metrics.find((one) => one.name === "TaskDuration").value;
}

const browser = await Browser.start(path);
try {
  await browser.open("about:blank", "true");
  await browser.send("Performance.enable", { timeDomain: "threadTicks" });
  await browser.open(`${service}/docs`, `document.querySelectorAll("details.call").length === ${names.length}`);
  const plan = await send(browser, "plan");
  const seconds = await processorSeconds(browser);
  assert.ok(seconds < mostProcessorSeconds, `the page and the main job took ${seconds.toFixed(2)} s of processor`);
  assert.equal(plan.summary, (await kept("plan.answer.json")).summary);

  const drawing = await send(browser, "fitmentDrawing");
  assert.ok(drawing.pictureWidth > 0, "the drawing is not shown");
  assert.ok(drawing.alt.length > 20);

  for (const name of names) {
    const answer = await send(browser, name);
    assert.match(answer.good ?? "", /^200 /, `${name}: ${answer.bad ?? ""} ${answer.text?.slice(0, 300)}`);
    assert.ok(answer.pictureWidth > 0 || answer.text?.length > 0, `${name}: nothing is shown`);
  }

  // A refusal is shown as one, with its reason.
  await browser.value(`document.querySelector("#tyreDecode input[name=marking]").value = "225/45Q17"`);
  const refused = await send(browser, "tyreDecode");
  assert.match(refused.bad, /^400 /);
  assert.ok(refused.summary.length > 0);

  // The members of a request unfold.
  await browser.value(`document.querySelectorAll("#plan .members details")[0].open = true`);
  await browser.until(`document.querySelectorAll("#plan .members li").length > 5`);

  const foreign = browser.requests.filter((url) => !url.startsWith(`${service}/`) && !url.startsWith("data:"));
  assert.deepEqual(foreign, [], "something else was asked");
  assert.deepEqual(browser.faults.filter((fault) => !fault.includes("status of 400")), [], "the browser has something to complain of");

  await browser.value(`document.querySelectorAll("details.call[open]").forEach((call) => (call.open = ["plan", "fitmentDrawing"].includes(call.id)))`);
  for (const width of [400, 900]) {
    for (const isDark of [false, true]) {
      await browser.dress(width, isDark);
      const wide = await browser.value("document.documentElement.scrollWidth");
      assert.ok(wide <= width, `${wide} px wide in a window of ${width} px`);
      if (folder) await browser.picture(join(folder, `docs-${width}-${isDark ? "dark" : "light"}.png`));
    }
  }
  console.log(`the page of the calls did the main job in ${seconds.toFixed(2)} s of processor, and all ${names.length} calls with their examples`);
} finally {
  await browser.close();
}
