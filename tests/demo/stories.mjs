// Tells the stories of docs/demo against a running service and reads their pages: stories.mjs SERVICE.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { catalogue } from "../../docs/demo/catalogue.mjs";
import { stories, tell } from "../../docs/demo/story.mjs";

const service = process.argv[2];
const wanted = {
  "tarn.html": { chapters: 8, pictures: 4, says: ["The job on the ramp", "Tightened to", "too little negative camber", "Fit &#39;", "It worked.", "Does not fit."] },
  "fell.html": { chapters: 6, pictures: 3, says: ["How it is set, and how he will know", "more negative camber than its cornering needs", "rear-camber-arms", "Worth renewing while the arms are off"] },
  "rill.html": { chapters: 5, pictures: 1, says: ["What Juno does on Saturday", "too little negative camber", "camber-bolts", "Not known, and said so:"] },
};
assert.deepEqual(stories.map(({ file }) => file).sort(), Object.keys(wanted).sort());

for (const story of stories) {
  const said = [];
  const { file, chapters, html } = await tell(story, service, (line) => said.push(line));
  const { chapters: count, pictures, says } = wanted[file];
  assert.ok(chapters.length >= count, `${file}: ${chapters.length} chapters`);
  assert.ok(html.split("<img ").length - 1 >= pictures, `${file}: ${html.split("<img ").length - 1} pictures`);
  for (const sentence of says) assert.ok(html.includes(sentence.replace("&#39;", "'")), `${file} does not say: ${sentence}`);

  // What was asked and answered stands folded away; what is read is the rest.
  const read = html.replace(/<details>.*?<\/details>/gs, "").replace(/<style>.*?<\/style>/s, "").replace(/ src="[^"]*"/g, "");
  assert.doesNotMatch(read, /undefined|NaN|\bnull\b|\[object|Infinity/, file);
  assert.doesNotMatch(html, /<script|https?:\/\/(?!127\.0\.0\.1|localhost)/, file);
  for (const [, alt] of read.matchAll(/<img alt="([^"]*)"/g)) assert.ok(alt.length > 10, `${file}: a picture without a text`);

  // What is told on the terminal is told there too: no chapter without a word, no line nobody can read.
  const told = said.join("\n");
  assert.ok(told.includes("  > "), file);
  assert.doesNotMatch(told, /undefined|NaN|\bnull\b|\[object|Infinity/, file);
  for (const chapter of told.split(/\n\n(?=\d+\. )/).slice(1)) assert.ok(chapter.trim().split("\n").length > 2, `${file}: a chapter with nothing told: ${chapter}`);
  assert.ok(told.split("\n").every((line) => line.length <= 110), `${file}: a line of ${Math.max(...told.split("\n").map((line) => line.length))} characters`);
  console.log(`${file}: ${chapters.length} chapters, ${html.length} characters`);
}

assert.equal(catalogue(), await readFile(new URL("../../api/examples/further/catalogue.csv", import.meta.url), "utf8"), "The catalogue is not what its script makes.");

const lines = (await readFile(new URL("../../api/examples/further/plan-jack-and-ruler.request.json", import.meta.url), "utf8")).trimEnd().split("\n").length;
assert.ok(lines < 40, `What a jack, a ruler and a camber gauge are enough for takes ${lines} lines.`);
