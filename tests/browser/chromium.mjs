// A headless Chromium that tests drive.
import { spawn } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";

const deadlineMs = 30_000;

/** Where Chromium is; null where this machine has none. */
export function chromium() {
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

/** A browser spoken to over its pipe: a message ends in a zero byte. */
export class Browser {
  #process;
  #profile;
  #next = 0;
  #waiting = new Map();
  #text = "";
  faults = [];
  requests = [];

  static async start(path) {
    return new Browser(path, await mkdtemp(join(tmpdir(), "browser-")));
  }

  constructor(path, profile) {
    this.#profile = profile;
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
      else if (message.method === "Network.requestWillBeSent") this.requests.push(message.params.request.url);
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

  /** Opens a page and waits until it is there and an expression on it is true. */
  async open(url, isReady) {
    if (!this.session) {
      const { targetId } = await this.send("Target.createTarget", { url: "about:blank" });
      this.session = (await this.send("Target.attachToTarget", { targetId, flatten: true })).sessionId;
      for (const part of ["Page", "Runtime", "Log", "Network"]) await this.send(`${part}.enable`);
    }
    this.faults.length = this.requests.length = 0;
    await this.send("Page.navigate", { url });
    await this.until(`document.readyState === 'complete' && ${isReady}`);
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

  /** The window's width and whether it is dark. */
  async dress(width, isDark) {
    await this.send("Emulation.setDeviceMetricsOverride", { width, height: 1300, deviceScaleFactor: 1, mobile: false });
    await this.send("Emulation.setEmulatedMedia", { features: [{ name: "prefers-color-scheme", value: isDark ? "dark" : "light" }] });
  }

  /** A picture of the whole page. */
  async picture(file) {
    const { data } = await this.send("Page.captureScreenshot", { captureBeyondViewport: true });
    await writeFile(file, Buffer.from(data, "base64"));
  }

  async close() {
    await new Promise((resolve) => {
      this.#process.once("exit", resolve);
      this.#process.kill();
    });
    await rm(this.#profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}
