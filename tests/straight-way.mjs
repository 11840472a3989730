#!/usr/bin/env node
// Measures the house: how many files stand on the straight way from a handler to its number, and what else can be counted.
//
//   node tests/straight-way.mjs [--files] [ROOT]     ROOT: a checkout, this one where left out; --files lists each way file by file
//
// The straight way of a call, counted the same on every commit:
//   1. A file uses another where its text, without comments and without the words inside string literals, names a type declared there that
//      it can see (same namespace, one around it, or a using).
//   2. Left out: what writes the answer or words for people (…Answer(s), …Response, …Part, …Word(s), …Chart, …Assumption(s), …Caution(s),
//      …Failure, …Problem(s), …Gap(s), …Finding(s)) and what serves every call alike (Api/Http, Api/Drawings, Domain/Answers).
//   3. The spine is every file on a shortest chain of uses from the file of the handler to the file of the type that works the number out.
//   4. The way is the spine and every file over 15 lines that a file of the spine names: what a reader opens to follow the number.
// A shorter file is a record read in passing; the table counts those by themselves, so that cutting files up gains nothing.
//
// Commit 933ecff, where people counted by hand 22, 31, 31 and 36, gives 26, 26, 32 and 38.
//
// Where docs/architecture.md lists the ways file by file, as somebody reads them, those lists are counted too and held: every file is there,
// and is named by one before it in the list. A list that is not so ends the script with 1.
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

// The type that handles the call and the one that works its number out, each by the names it has had, the present one first.
const WAYS = [
  { call: 'check', number: 'room at a place of the corner', handler: ['CheckEndpoint', 'FitmentEndpoints'], solver: ['ClearanceChecks'] },
  { call: 'travel-sweep', number: 'pose of the upright at a travel', handler: ['TravelSweepEndpoint', 'SweepEndpoints'], solver: ['PoseSolver'] },
  { call: 'diagnosis', number: 'probability of a cause', handler: ['DiagnosisEndpoint', 'DiagnosisEndpoints'], solver: ['AxlePosterior'] },
  { call: 'camber-target', number: 'pose of the outer wheel in a bend', handler: ['CamberTargetEndpoint', 'CamberTargetEndpoints'], solver: ['PoseSolver'] },
];
const SHORT_LINES = 15;
const CROWDED_FILES = 20;
const ANSWERS = /(Answers?|Response|Part|Words?|Chart|Assumptions?|Cautions?|Failure|Problems?|Gaps?|Findings?)\.cs$/;
const FOR_ALL = /^SetupService\.(Api\/(Http|Drawings)|Domain\/Answers)\//;

const options = process.argv.slice(2);
const root = resolve(options.find(option => !option.startsWith('--')) ?? join(dirname(fileURLToPath(import.meta.url)), '..'));
const src = join(root, 'src');

function sources(folder) {
  return readdirSync(folder).sort().flatMap(name => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return name === 'obj' || name === 'bin' ? [] : sources(path);
    return name.endsWith('.cs') ? [path] : [];
  });
}

/** The code without comments; of a string literal only what stands in braces, for that is code again. */
function codeOf(text) {
  return text
    .replace(/"""[\s\S]*?"""|@?\$*"(?:\\.|[^"\\\n])*"|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, part => (part.includes('"') && !part.startsWith('/') ? (part.match(/\{[^{}]*\}/g) ?? []).join(' ') : ' '));
}

const files = sources(src).map(path => {
  const text = readFileSync(path, 'utf8');
  const code = codeOf(text);
  return {
    name: relative(src, path),
    lines: text.split('\n').length - 1,
    code,
    space: /namespace ([\w.]+)/.exec(code)?.[1] ?? '',
    usings: [...code.matchAll(/^using (?:static )?([\w.]+);/gm)].map(match => match[1]),
    types: [...code.matchAll(/\b(?:class|record struct|record class|record|struct|interface|enum)\s+([A-Z]\w*)/g)].map(match => match[1]),
    enums: [...code.matchAll(/\benum\s+([A-Z]\w*)[^{]*\{([^}]*)\}/g)].map(match => ({ name: match[1], words: (match[2].replace(/\[[^\]]*\]/g, '').match(/\b[A-Z]\w*/g) ?? []).join(' ') })),
  };
});
const declared = new Map();
for (const file of files) for (const type of file.types) declared.set(type, [...(declared.get(type) ?? []), file]);

const sees = (file, other) => file.space === other.space || file.space.startsWith(other.space + '.') || file.usings.some(used => used === other.space || used.startsWith(other.space + '.'));
const uses = new Map(files.map(file => {
  const names = new Set(file.code.match(/\b[A-Z]\w*\b/g) ?? []);
  return [file, new Set([...names].flatMap(name => declared.get(name) ?? []).filter(other => other !== file && sees(file, other)))];
}));

function distances(start, next) {
  const found = new Map([[start, 0]]);
  for (const [file, distance] of found) for (const other of next(file)) if (!found.has(other)) found.set(other, distance + 1);
  return found;
}

function straightWay({ call, handler, solver }) {
  const [from, to] = [handler, solver].map(names => names.flatMap(name => declared.get(name) ?? [])[0]);
  if (!from || !to) throw new Error(`${call}: none of the types ${(!from ? handler : solver).join(', ')} is there; name the present one in ${basename(fileURLToPath(import.meta.url))}`);
  const counts = file => !ANSWERS.test(file.name) && !FOR_ALL.test(file.name);
  const next = file => [...uses.get(file)].filter(counts);
  const users = new Map(files.map(file => [file, []]));
  for (const file of files.filter(counts)) for (const other of next(file)) users.get(other).push(file);
  const down = distances(from, next);
  const up = distances(to, file => users.get(file));
  if (!down.has(to)) throw new Error(`${call}: no chain of uses leads from ${from.name} to ${to.name}`);
  const spine = files.filter(file => down.has(file) && up.has(file) && down.get(file) + up.get(file) === down.get(to)).sort((a, b) => down.get(a) - down.get(b));
  const named = new Set(spine.flatMap(next).filter(file => file.lines > SHORT_LINES && !spine.includes(file)));
  return { spine, named: [...named].sort((a, b) => (a.name < b.name ? -1 : 1)) };
}

/** The ways as docs/architecture.md lists them: { call, names }, and what is wrong in them. */
function listedWays() {
  const path = join(root, 'docs/architecture.md');
  if (!existsSync(path)) return { ways: [], faults: [] };
  const byName = new Map(files.map(file => [file.name, file]));
  const faults = [];
  const ways = readFileSync(path, 'utf8').split('\n### ').slice(1).map(section => {
    const call = section.split(/[,\n]/)[0].trim();
    const names = [...section.matchAll(/^\d+\. `([\w/]+\.cs)`/gm)].map(match => `SetupService.${match[1]}`);
    names.forEach((name, place) => {
      if (!byName.has(name)) faults.push(`${call}: ${name} is not there`);
      else if (place > 0 && !names.slice(0, place).some(before => byName.has(before) && uses.get(byName.get(before)).has(byName.get(name)))) faults.push(`${call}: no file before ${name} names it`);
    });
    return { call, names };
  }).filter(way => way.names.length > 0);
  return { ways, faults };
}

const lines = part => files.filter(file => file.name.startsWith(part)).reduce((sum, file) => sum + file.lines, 0);
const sorted = files.map(file => file.lines).sort((a, b) => a - b);
const longest = files.reduce((most, file) => (file.lines > most.lines ? file : most));
const folders = new Map();
for (const file of files) folders.set(dirname(file.name), [...(folders.get(dirname(file.name)) ?? []), file]);
const crowded = [...folders].filter(([, all]) => all.length > CROWDED_FILES);
const twice = [...declared].filter(([, all]) => new Set(all).size > 1 && !/\bpartial\b/.test(all[0].code));
const enumsIn = part => files.filter(file => file.name.startsWith(part)).flatMap(file => file.enums);
const enumsTwice = enumsIn('SetupService.Api/').filter(one => enumsIn('SetupService.Domain/').some(other => other.words === one.words && one.words !== ''));
const api = lines('SetupService.Api/');
const domain = lines('SetupService.Domain/');
const count = pattern => files.reduce((sum, file) => sum + (file.code.match(pattern) ?? []).length, 0);

const listed = listedWays();
const ways = WAYS.map(way => ({ ...way, ...straightWay(way) }));
console.log(`| what | measured |
| --- | --- |
| files in src, median and longest | ${files.length}, ${sorted[Math.floor(sorted.length / 2)]} and ${longest.lines} lines (${longest.name}) |
| files of at most ${SHORT_LINES} lines | ${files.filter(file => file.lines <= SHORT_LINES).length} |
| folders over ${CROWDED_FILES} files | ${crowded.length}${crowded.length ? `: ${crowded.map(([folder, all]) => `${folder} ${all.length}`).join(', ')}` : ''} |
| files on the straight way, as docs/architecture.md lists them | ${listed.ways.map(way => `${way.call} ${way.names.length}`).join(', ')} |
| files over ${SHORT_LINES} lines on the straight way and named by it | ${ways.map(way => `${way.call} ${way.spine.length + way.named.length}`).join(', ')} |
| type names that occur twice | ${twice.length}${twice.length ? `: ${twice.map(([name]) => name).join(', ')}` : ''} |
| enums written twice | ${enumsTwice.length}${enumsTwice.length ? `: ${enumsTwice.map(one => one.name).join(', ')}` : ''} |
| validators, calls of Custom | ${count(/:\s*AbstractValidator</g)}, ${count(/\.Custom(?:Async)?\(/g)} |
| lines of Api against Domain | ${api} to ${domain}, ${(api / domain).toFixed(2)} |
| api/openapi.json | ${(statSync(join(root, 'api/openapi.json')).size / 1e6).toFixed(2)} MB |`);
if (options.includes('--files')) {
  for (const way of ways) console.log(`\n${way.call}, to the ${way.number}\n${way.spine.map(file => `  ${file.name}`).join('\n')}\n${way.named.map(file => `    ${file.name}`).join('\n')}`);
}
for (const fault of listed.faults) console.error(`docs/architecture.md: ${fault}`);
process.exitCode = listed.faults.length ? 1 : 0;
