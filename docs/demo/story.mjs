// Walks three cars through the whole job against a running service, tells it on the terminal, and writes a page of each.
// node docs/demo/story.mjs [SERVICE [FOLDER]]: the service is http://localhost:5080 and the folder docs/demo/pages where left out.
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { page } from "./page.mjs";
import { spoken } from "./spoken.mjs";
import { fell } from "./fell.mjs";
import { rill } from "./rill.mjs";
import { tarn } from "./tarn.mjs";

const examples = new URL("../../api/examples/", import.meta.url);
const readJson = async (place) => JSON.parse(await readFile(place, "utf8"));

/** Asks one service, and keeps what was asked. */
class Service {
  #base;
  calls = [];

  constructor(base) {
    this.#base = base.replace(/\/$/, "");
  }

  async #send(path, body) {
    const response = await fetch(this.#base + path, { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) });
    const text = await response.text();
    if (!response.ok) throw new Error(`${path}: ${response.status} ${text}`);
    return text;
  }

  /** A call's answer. `adds` names what its body has beside what was sent before. */
  async ask(path, body, adds = []) {
    const started = performance.now();
    const answer = JSON.parse(await this.#send(path, body));
    this.calls.push({ path, adds, body, answer, milliseconds: performance.now() - started });
    return answer;
  }

  /** The picture a call draws. */
  picture(path, body) {
    return this.#send(path, body);
  }

  /** The calls asked since the last time. */
  taken() {
    return this.calls.splice(0);
  }
}

/** Tells a story: the page, and what was said on the way. */
export async function tell(story, base, say = () => {}) {
  const service = new Service(base);
  const chapters = [];
  const request = await readJson(new URL(story.request, examples));
  const more = story.data ? await readJson(new URL(story.data, import.meta.url)) : null;
  say(`\n${story.title}\n${"=".repeat(story.title.length)}\n${spoken({ text: story.lead })}`);
  const files = [];
  for await (const { title, content, files: beside = [] } of story.chapters(service, request, more)) {
    files.push(...beside);
    chapters.push({ title, content: [...content, ...beside.map(({ name, text }) => ({ link: { name, text } }))], calls: service.taken() });
    say(`\n${chapters.length}. ${title}`);
    for (const block of content) {
      const lines = spoken(block);
      if (lines) say(lines);
    }
  }

  const edition = chapters.flatMap(({ calls }) => calls).find(({ answer }) => answer.edition)?.answer.edition;
  return { file: story.file, files, chapters, html: page({ title: story.title, lead: story.lead, chapters, service: base, edition }) };
}

export const stories = [tarn, fell, rill];

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [base = "http://localhost:5080", folder = fileURLToPath(new URL("pages/", import.meta.url))] = process.argv.slice(2);
  try {
    await mkdir(folder, { recursive: true });
    for (const story of stories) {
      const { file, files, html } = await tell(story, base, console.log);
      await writeFile(join(folder, file), html);
      for (const beside of files) await writeFile(join(folder, beside.name), beside.html);
      console.log(`\nWritten with its pictures: ${join(folder, file)}`);
    }
  } catch (error) {
    console.error(error.cause?.code === "ECONNREFUSED" ? `No service answers at ${base}. Start it with: dotnet run --project src/SetupService.Api` : error);
    process.exit(1);
  }
}
