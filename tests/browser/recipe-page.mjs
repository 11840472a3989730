// Opens docs/recipes/page in a headless Chromium, reads a marking with it and one that is none.
// recipe-page.mjs SERVICE PORT: the service allows pages of http://127.0.0.1:PORT. Exits 0 and says so where there is no Chromium.
import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { Browser, chromium } from "./chromium.mjs";
import { serve } from "./serve.mjs";

const [service, port] = process.argv.slice(2);
const path = chromium();
if (!path) {
  console.log("skipped: no chromium on this machine, so no browser opens the recipe's page");
  process.exit(0);
}

const server = await serve(fileURLToPath(new URL("../../docs/recipes/page/", import.meta.url)), Number(port));
const browser = await Browser.start(path);

/** What the page says of a marking. */
async function said(marking) {
  await browser.value(`(() => {
    document.querySelector("#said").textContent = "";
    document.querySelector("input").value = ${JSON.stringify(marking)};
    document.querySelector("button").click();
  })()`);
  await browser.until('document.querySelector("#said").textContent !== ""');
  return browser.value('document.querySelector("#said").textContent');
}

try {
  await browser.open(`http://127.0.0.1:${port}/?service=${encodeURIComponent(service)}`, "!!document.querySelector('#said')");

  // Load index 94 is 670 kg (French order of 24 October 1994, Annex I), speed symbol W 270 km/h (the handbook "Automotive Engineering: Powertrain, Chassis System
  // and Vehicle Body", chapter 10.1, p. 291); 17 × 25.4 + 2 × 0.45 × 225 = 634 mm.
  assert.match(await said("225/45R17 94W XL"), /^634 mm across, carries 670 kg up to 270 km\/h, for rims from 7 to 8\.5 in\.$/);
  assert.match(await said("225/45Q17"), /225\/45Q17|Q17/);
  assert.deepEqual(browser.faults.filter((fault) => !fault.includes("status of 400")), []);
  console.log("the recipe's page reads a marking, and says what is wrong with one that is none");
} finally {
  await browser.close();
  server.close();
}
