// Makes a story's page: one HTML file with its pictures in it, nothing run and nothing fetched.

export const escape = (text) => String(text).replace(/[&<>"]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[sign]);

/** A number with a real minus and so many decimals; a word where it is not known. */
export const number = (value, decimals = 1, unit = "") =>
  value === null || value === undefined ? "not known" : `${value.toFixed(decimals).replace(/^-(0(?:\.0*)?)$/, "$1").replace("-", "−")}${unit}`;

export const signed = (value, decimals, unit) => (Number(value.toFixed(decimals)) > 0 ? "+" : "") + number(value, decimals, unit);

const style = `
:root { color-scheme: light dark; --paper: #fbfaf6; --ink: #1b2530; --soft: #55616d; --edge: #d5d5cc; --mark: #125d73; --panel: #f1efe7; --good: #1c6a3d; --bad: #af1d28; }
@media (prefers-color-scheme: dark) { :root { --paper: #12181d; --ink: #e9ecee; --soft: #a3afba; --edge: #38434c; --mark: #6fc3d6; --panel: #1a2229; --good: #7ccf9a; --bad: #ff9b94; } }
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 17px/1.6 system-ui, sans-serif; overflow-wrap: break-word; }
main { max-width: 44rem; margin: 0 auto; padding: 2.5rem 1.25rem 5rem; }
h1 { font-size: 2.1rem; line-height: 1.15; margin: 0 0 .75rem; letter-spacing: -.01em; }
h2 { font-size: 1.35rem; line-height: 1.25; margin: 0 0 .75rem; }
.lead { font-size: 1.15rem; color: var(--soft); margin: 0 0 1rem; }
.small { font-size: .875rem; color: var(--soft); }
section { border-top: 1px solid var(--edge); margin-top: 2.5rem; padding-top: 1.75rem; }
.step { display: inline-block; color: var(--mark); font-size: .8rem; font-weight: 600; letter-spacing: .08em; text-transform: uppercase; margin-bottom: .35rem; }
.answer { margin: 1.25rem 0; padding: 1rem 1.15rem; background: var(--panel); border-left: 4px solid var(--mark); border-radius: 0 6px 6px 0; }
.answer p { margin: 0; } .answer p + p { margin-top: .6rem; }
.answer strong:first-child { font-size: 1.05rem; }
figure { margin: 1.5rem 0; } figure img { display: block; width: 100%; max-width: 34rem; margin: 0 auto; border: 1px solid var(--edge); border-radius: 6px; }
figcaption { color: var(--soft); font-size: .875rem; margin-top: .5rem; text-align: center; }
.scroll { overflow-x: auto; margin: 1.25rem 0; }
table { border-collapse: collapse; width: 100%; font-size: .95rem; }
th, td { text-align: left; vertical-align: top; padding: .45rem .8rem .45rem 0; border-bottom: 1px solid var(--edge); }
th { font-weight: 600; color: var(--soft); } td.n, th.n { text-align: right; font-variant-numeric: tabular-nums; } td.n { white-space: nowrap; }
@media (max-width: 30rem) { table { font-size: .82rem; } th, td { padding-right: .5rem; } }
tr.mark td { font-weight: 600; }
a { color: var(--mark); }
ul { padding-left: 1.2rem; } li { margin: .35rem 0; }
details { margin: .75rem 0; font-size: .875rem; } summary { cursor: pointer; color: var(--soft); }
code { font: .85em/1.5 ui-monospace, monospace; }
pre { overflow: auto; max-height: 22rem; padding: .8rem; border: 1px solid var(--edge); border-radius: 6px; font: 12px/1.5 ui-monospace, monospace; white-space: pre-wrap; overflow-wrap: anywhere; }
@media print { details { display: none; } section { break-inside: avoid; } .answer { border: 1px solid #999; border-left-width: 4px; } }
`;

/** A table; a cell is text, or { text, isNumber, tone }. */
function table({ head, rows, marked }) {
  const cell = (tag, one) => {
    const { text, isNumber, tone } = typeof one === "object" && one !== null ? one : { text: one };
    return `<${tag} class="${[isNumber ? "n" : "", tone ?? ""].join(" ").trim()}">${escape(text)}</${tag}>`.replace(' class=""', "");
  };
  const line = (cells, tag, mark) => `<tr${mark ? ' class="mark"' : ""}>${cells.map((one) => cell(tag, one)).join("")}</tr>`;
  return `<div class="scroll"><table><thead>${line(head, "th")}</thead><tbody>${rows.map((row, i) => line(row, "td", i === marked)).join("")}</tbody></table></div>`;
}

const picture = ({ svg, caption }) =>
  `<figure><img src="data:image/svg+xml;base64,${Buffer.from(svg).toString("base64")}" alt="${escape(/<title[^>]*>([^<]*)/.exec(svg)?.[1].replaceAll("&amp;", "&") ?? caption)}"><figcaption>${escape(caption)}</figcaption></figure>`;

const asked = ({ path, adds, body, answer, milliseconds }) =>
  `<details><summary><code>POST ${escape(path)}</code>${adds?.length ? ` with ${adds.map((one) => `<code>${escape(one)}</code>`).join(", ")} beside what was sent before` : ""}: ${Math.round(milliseconds)} ms</summary>` +
  `<pre>${escape(JSON.stringify(body, null, 1))}</pre><pre>${escape(typeof answer === "string" ? answer : JSON.stringify(answer, null, 1))}</pre></details>`;

const blocks = {
  text: (text) => `<p>${escape(text)}</p>`,
  answer: (text) => `<div class="answer">${text.split(/(?<=[.!?]) (?=First\b|Next check:|That is )/).map((one, i) => `<p>${i === 0 ? emphasized(one) : escape(one)}</p>`).join("")}</div>`,
  list: (items) => `<ul>${items.map((one) => `<li>${escape(one)}</li>`).join("")}</ul>`,
  table,
  picture,
  html: (html) => html,
  link: ({ name, text }) => `<p><a href="${escape(name)}">${escape(text)}</a></p>`,
};

// The verdict is the first sentence.
function emphasized(text) {
  const [first, ...rest] = text.split(/(?<=[.!?]) (?=\p{Lu})/u);
  return `<strong>${escape(first)}</strong>${rest.length ? " " + escape(rest.join(" ")) : ""}`;
}

/** The page of a story whose chapters were told. */
export function page({ title, lead, chapters, service, edition }) {
  const sections = chapters.map(({ title: heading, content, calls }, i) =>
    `<section><span class="step">${i + 1} of ${chapters.length}</span><h2>${escape(heading)}</h2>${content.map((block) => blocks[Object.keys(block)[0]](Object.values(block)[0])).join("\n")}${calls.map(asked).join("")}</section>`);
  const count = chapters.reduce((sum, { calls }) => sum + calls.length, 0);
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">
<link rel="icon" href="data:,">
<title>${escape(title)}</title>
<style>${style}</style>
</head>
<body>
<main>
<h1>${escape(title)}</h1>
<p class="lead">${escape(lead)}</p>
<p class="small">Car, people, parts and prices are invented. What stands in a shaded box was answered by ${escape(service)} when this page was made, edition ${escape(edition)}, in ${count} calls; each can be unfolded under its chapter.</p>
${sections.join("\n")}
<section><p class="small">Arithmetic on what was measured, no approval and no inspection. Springs under load, brakes and wheel fasteners carry lives: work of this kind belongs in trained hands, wheel fasteners are checked again after a short first drive, and local law decides what may be driven on the road.</p></section>
</main>
</body>
</html>
`;
}
