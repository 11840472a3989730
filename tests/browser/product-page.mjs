// Opens docs/examples/product-page in a headless Chromium, asks as a customer would and reads what it shows.
// product-page.mjs SERVICE PORT [SCREENSHOT]: the service's address, which allows pages of http://127.0.0.1:PORT, and where to keep a picture.
// Exits 0 and says so where there is no Chromium.
import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { createServer } from "node:http";
import { accessSync, constants } from "node:fs";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { delimiter, extname, join } from "node:path";
import { fileURLToPath } from "node:url";

const [service, port, screenshot] = process.argv.slice(2);
const folder = fileURLToPath(new URL("../../docs/examples/product-page/", import.meta.url));
const deadlineMs = 30_000;

function chromium() {
  for (const name of ["chromium", "chromium-browser"]) {
    for (const place of (process.env.PATH ?? "").split(delimiter)) {
      try {
        accessSync(join(place, name), constants.X_OK);
        return join(place, name);
      } catch {
        // Not here.
      }
    }
  }
  return null;
}

/** Serves the page's files on a port. */
async function serve(at) {
  const types = { ".html": "text/html; charset=utf-8", ".js": "text/javascript" };
  const server = createServer(async (request, response) => {
    const name = new URL(request.url, "http://page").pathname.slice(1) || "index.html";
    try {
      const bytes = await readFile(join(folder, name));
      response.writeHead(200, { "content-type": types[extname(name)] ?? "application/octet-stream" }).end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((resolve, reject) => server.once("error", reject).listen(at, "127.0.0.1", resolve));
  return server;
}

/** A browser spoken to over its pipe: a message ends in a zero byte. */
class Browser {
  #process;
  #next = 0;
  #waiting = new Map();
  #text = "";
  faults = [];

  constructor(path, profile) {
    const asRoot = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
    this.#process = spawn(path, ["--headless", "--disable-gpu", "--remote-debugging-pipe", `--user-data-dir=${profile}`, "--window-size=900,1300", ...asRoot], {
      stdio: ["ignore", "ignore", "ignore", "pipe", "pipe"],
    });
    this.#process.stdio[4].setEncoding("utf8").on("data", (piece) => this.#read(piece));
  }

  #read(piece) {
    const messages = (this.#text + piece).split("\0");
    this.#text = messages.pop();
    for (const message of messages.map((one) => JSON.parse(one))) {
      if (message.id) this.#waiting.get(message.id)(message);
      else if (message.method === "Runtime.exceptionThrown") this.faults.push(message.params.exceptionDetails.text);
      else if (message.method === "Log.entryAdded" && message.params.entry.level === "error") this.faults.push(message.params.entry.text);
    }
  }

  async send(method, params = {}) {
    const id = ++this.#next;
    const answered = new Promise((resolve, reject) => {
      const late = setTimeout(() => reject(new Error(`${method}: no answer from the browser`)), deadlineMs);
      this.#waiting.set(id, (message) => (clearTimeout(late), resolve(message)));
    });
    this.#process.stdio[3].write(JSON.stringify({ id, method, params, sessionId: this.session }) + "\0");
    const message = await answered;
    if (message.error) throw new Error(`${method}: ${message.error.message}`);
    return message.result;
  }

  async open(url) {
    if (!this.session) {
      const { targetId } = await this.send("Target.createTarget", { url: "about:blank" });
      this.session = (await this.send("Target.attachToTarget", { targetId, flatten: true })).sessionId;
      for (const part of ["Page", "Runtime", "Log"]) await this.send(`${part}.enable`);
    }
    this.faults.length = 0;
    await this.send("Page.navigate", { url });
    await this.until("document.readyState === 'complete' && !!document.querySelector('form').product?.length");
  }

  async value(expression) {
    const { result, exceptionDetails } = await this.send("Runtime.evaluate", { expression, returnByValue: true, awaitPromise: true });
    if (exceptionDetails) throw new Error(`${expression}: ${exceptionDetails.text}`);
    return result.value;
  }

  async until(expression) {
    for (const end = Date.now() + deadlineMs; Date.now() < end; await new Promise((resolve) => setTimeout(resolve, 50))) {
      if (await this.value(expression).catch(() => false)) return;
    }
    throw new Error(`never came: ${expression}`);
  }

  close() {
    return new Promise((resolve) => {
      this.#process.once("exit", resolve);
      this.#process.kill();
    });
  }
}

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

const profile = await mkdtemp(join(tmpdir(), "product-page-"));
const servers = [await serve(Number(port)), await serve(Number(port) + 1)];
const browser = new Browser(path, profile);
try {
  await browser.open(`http://127.0.0.1:${port}/?service=${encodeURIComponent(service)}`);
  const fits = await ask(browser, 0, 0, { inboardMm: 14, outboardMm: 18 });
  assert.equal(fits.verdict, "It fits.");
  assert.equal(fits.summary, "Fits, with 12 mm inboard and 5.6 mm to the arch lip. Turn the wheel by hand over full travel and lock before driving.");
  assert.ok(fits.picturePx > 0, "the drawing is not shown");
  assert.equal(fits.alt, fits.summary);
  if (screenshot) await writeFile(screenshot, Buffer.from((await browser.send("Page.captureScreenshot", { captureBeyondViewport: true })).data, "base64"));

  const open = await ask(browser, 0, 0);
  assert.equal(open.verdict, "Not known yet.");
  assert.match(open.summary, /takes 7\.5 mm more room to the arch lip/);
  assert.ok(open.picturePx > 0);

  const wrong = await ask(browser, 0, 2, { outboardMm: 18 });
  assert.equal(wrong.verdict, "It does not fit.");
  assert.match(wrong.summary, /5 holes on 112 mm/);

  assert.deepEqual(browser.faults, [], "the browser has something to complain of");

  // A page of an origin that the service does not allow may not read its answers.
  await browser.open(`http://127.0.0.1:${Number(port) + 1}/?service=${encodeURIComponent(service)}`);
  const stranger = await ask(browser, 0, 0, { outboardMm: 18 });
  assert.equal(stranger.verdict, "No answer.");
  assert.equal(stranger.hasPicture, false);
  assert.ok(browser.faults.some((fault) => fault.includes("CORS")), "the browser should have refused the answer");
  console.log("the product page asks, shows verdict, sentence and drawing, and a stranger's page gets nothing");
} finally {
  await browser.close();
  for (const server of servers) server.close();
  await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
}
