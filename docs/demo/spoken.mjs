// What a block of a story is on the terminal: text in lines a person reads, an answer marked as one, a table where it is small enough.

const width = 96;
const widestTable = 110;

const wrapped = (text, first, rest = first) => {
  const lines = [first];
  for (const word of text.split(" ")) {
    const at = lines.length - 1;
    if ((lines[at] + word).length > width && lines[at] !== first && lines[at] !== rest) lines.push(rest + word + " ");
    else lines[at] += word + " ";
  }

  return lines.map((line) => line.trimEnd()).join("\n");
};

const cellText = (cell) => String(typeof cell === "object" && cell !== null ? cell.text : cell);

function table({ head, rows, marked }) {
  const all = [head, ...rows];
  const widths = head.map((_, i) => Math.max(...all.map((row) => cellText(row[i]).length)));
  if (widths.reduce((sum, one) => sum + one + 2, 2) > widestTable) return "";
  const isNumber = head.map((cell) => typeof cell === "object" && cell !== null && cell.isNumber);
  return all.map((row, n) => ((n > 0 && n - 1 === marked ? "  * " : "    ") + row.map((cell, i) => (isNumber[i] ? cellText(cell).padStart(widths[i]) : cellText(cell).padEnd(widths[i]))).join("  ")).trimEnd()).join("\n");
}

/** The lines of a block; nothing where it is a picture, or too wide for a terminal. */
export function spoken(block) {
  if (block.text) return wrapped(block.text, "");
  if (block.answer) return wrapped(block.answer, "  > ");
  if (block.list) return block.list.map((one) => wrapped(one, "  - ", "    ")).join("\n");
  if (block.table) return table(block.table);
  return "";
}
