// Opens docs/examples/product-page in a headless Chromium, asks as a customer would and reads what it shows.
// product-page.mjs SERVICE PORT [SCREENSHOT]: the service's address, which allows pages of http://127.0.0.1:PORT, and where to keep a picture.
// Exits 0 and says so where there is no Chromium.
import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { Browser, chromium } from "./chromium.mjs";
import { serve } from "./serve.mjs";

const [service, port, screenshot] = process.argv.slice(2);
const folder = fileURLToPath(new URL("../../docs/examples/product-page/", import.meta.url));

/** Fills the form, presses the button, and gives what the page then shows. */
async function ask(browser, car, product, gaps = {}) {
  await browser.value(`(() => {
    const form = document.querySelector("form");
    form.car.selectedIndex = ${car};
    form.product.selectedIndex = ${product};
    for (const [name, value] of Object.entries(${JSON.stringify({ inboardMm: "", outboardMm: "", ...gaps })})) form[name].value = value;
    form.dispatchEvent(new Event("input", { bubbles: true }));
    form.querySelector("button").click();
  })()`);
  await browser.until("document.querySelector('#verdict').textContent !== ''");
  const shown = await browser.value(`({ verdict: document.querySelector("#verdict").textContent, summary: document.querySelector("#summary").textContent, hasPicture: !!document.querySelector("#answer img") })`);
  if (shown.hasPicture) {
    await browser.until("document.querySelector('#answer img').complete");
    shown.picturePx = await browser.value("document.querySelector('#answer img').naturalWidth");
    shown.alt = await browser.value("document.querySelector('#answer img').alt");
  }
  return shown;
}

const path = chromium();
if (!path) {
  console.log("skipped: no chromium on this machine, so no browser opens the page");
  process.exit(0);
}

const servers = [await serve(folder, Number(port)), await serve(folder, Number(port) + 1)];
const browser = await Browser.start(path);
const isReady = "!!document.querySelector('form').product?.length";
try {
  await browser.open(`http://127.0.0.1:${port}/?service=${encodeURIComponent(service)}`, isReady);
  const fits = await ask(browser, 0, 0, { inboardMm: 14, outboardMm: 18 });
  assert.equal(fits.verdict, "It fits.");
  assert.equal(fits.summary, "Fits, with 12 mm inboard and 5.6 mm to the arch lip. Turn the wheel by hand over full travel and lock before driving.");
  assert.ok(fits.picturePx > 0, "the drawing is not shown");
  assert.equal(fits.alt, fits.summary);
  if (screenshot) await browser.picture(screenshot);

  const open = await ask(browser, 0, 0);
  assert.equal(open.verdict, "Not known yet.");
  assert.match(open.summary, /takes 7\.5 mm more room to the arch lip/);
  assert.ok(open.picturePx > 0);

  const wrong = await ask(browser, 0, 2, { outboardMm: 18 });
  assert.equal(wrong.verdict, "It does not fit.");
  assert.match(wrong.summary, /5 holes on 112 mm/);

  assert.deepEqual(browser.faults, [], "the browser has something to complain of");

  // A page of an origin that the service does not allow may not read its answers.
  await browser.open(`http://127.0.0.1:${Number(port) + 1}/?service=${encodeURIComponent(service)}`, isReady);
  const stranger = await ask(browser, 0, 0, { outboardMm: 18 });
  assert.equal(stranger.verdict, "No answer.");
  assert.equal(stranger.hasPicture, false);
  assert.ok(browser.faults.some((fault) => fault.includes("CORS")), "the browser should have refused the answer");
  console.log("the product page asks, shows verdict, sentence and drawing, and a stranger's page gets nothing");
} finally {
  await browser.close();
  for (const server of servers) server.close();
}
