#!/usr/bin/env node
// Changes the domain's code in one place at a time and asks whether a test notices: a sample by seed, so that two runs try the same places.
//
//   node tests/mutants.mjs [ROOM,...] [--count 60] [--seed 1]      rooms of src/SetupService.Domain; all where left out
//
// Works in a copy under the system's folder for temporary files; the checkout is not touched. A mutant is killed where a test fails or
// runs over its time; the tests of its own room are asked first, then all. One that does not compile is replaced by another. For the long
// run: about half a minute a mutant. Exit status 1 where a room has less than 85 % killed.
//
// mutants.survivors.txt beside this file lists survivors that no test could kill or should: "file: before -> after: why", a line each.
// They are told as such and do not count.
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..');
const WANTED_SHARE = 0.85;
const TEST_SECONDS = 240;
const SLOW = ['CalibrationTests', 'SimulatedCarsTests', 'FloorTests'];

const args = process.argv.slice(2);
const option = (name, usual) => (args.includes(name) ? Number(args.splice(args.indexOf(name), 2)[1]) : usual);
const count = option('--count', 60);
const seed = option('--seed', 1);
const domain = 'src/SetupService.Domain';
const rooms = args[0]?.split(',') ?? readdirSync(join(root, domain)).filter(name => statSync(join(root, domain, name)).isDirectory() && !['bin', 'obj'].includes(name)).sort();

/** What is changed into what: relations and logic, arithmetic, limits, numbers. */
const CHANGES = [
  [/ <= /g, ' < '], [/ >= /g, ' > '], [/ < /g, ' <= '], [/ > /g, ' >= '], [/ == /g, ' != '], [/ != /g, ' == '], [/ && /g, ' || '], [/ \|\| /g, ' && '],
  [/ \+ /g, ' - '], [/ - /g, ' + '], [/ \* /g, ' / '], [/ \/ /g, ' * '], [/\bMath\.Max\(/g, 'Math.Min('], [/\bMath\.Min\(/g, 'Math.Max('], [/\bMath\.Abs\(/g, '('],
  [/(?<![\w.])\d+(?:\.\d+)?(?![\w.])/g, number => String(number.includes('.') ? Number((number * 1.1).toPrecision(12)) : Number(number) + 1)],
  [/\btrue\b/g, 'false'], [/\bfalse\b/g, 'true'], [/return null;/g, 'return default!;'],
];

function random(state) { // mulberry32
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

function sources(folder) {
  return readdirSync(folder).sort().flatMap(name => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? sources(path) : name.endsWith('.cs') ? [path] : [];
  });
}

/** Comments, attributes and texts are blanked, length kept: only what computes is changed. */
function computing(text) {
  return text.replace(/"""[\s\S]*?"""|\$?@?"(?:\\.|[^"\\\n])*"|\/\/[^\n]*|^\s*\[[A-Z][^\n]*\]\s*$|^\s*(?:using|namespace)[^\n]*$|'.'/gm, part => part.replace(/[^\n]/g, ' '));
}

function places(room, copy) {
  return sources(join(copy, domain, room)).flatMap(path => {
    const code = computing(readFileSync(path, 'utf8'));
    return CHANGES.flatMap(([pattern, change]) => [...code.matchAll(pattern)].map(match => ({
      file: relative(copy, path), at: match.index, from: match[0], to: typeof change === 'string' ? change : change(match[0]),
      line: code.slice(0, match.index).split('\n').length,
    }))).sort((a, b) => a.at - b.at);
  });
}

const run = (copy, command, seconds) => spawnSync('dotnet', command, { cwd: copy, encoding: 'utf8', timeout: seconds * 1000, killSignal: 'SIGKILL', env: { ...process.env, DOTNET_CLI_TELEMETRY_OPTOUT: '1' } });
const build = (copy, project) => run(copy, ['build', project, '--nologo', '-v', 'quiet', '-p:RunAnalyzers=false', '-p:GenerateDocumentationFile=false', '-p:TreatWarningsAsErrors=false'], 600).status === 0;

/** Builds the domain as it stands now under the tests that are built already; false where it does not compile. */
function lay(copy) {
  const dll = 'bin/Debug/net10.0/SetupService.Domain.dll';
  if (!build(copy, domain)) return false;
  cpSync(join(copy, domain, dll), join(copy, 'tests/SetupService.Domain.Tests', dll));
  return true;
}

function notices(copy, filter) {
  const tests = 'tests/SetupService.Domain.Tests/bin/Debug/net10.0/SetupService.Domain.Tests.dll';
  const skipped = SLOW.map(name => `FullyQualifiedName!~${name}`).join('&');
  return run(copy, ['test', tests, '--nologo', '--filter', filter ? `(${filter})&${skipped}` : skipped, '--', 'xUnit.StopOnFail=true'], TEST_SECONDS).status !== 0;
}

const survivorsFile = join(here, 'mutants.survivors.txt');
const known = existsSync(survivorsFile) ? readFileSync(survivorsFile, 'utf8').split('\n').filter(line => line.trim() && !line.startsWith('#')) : [];
const copy = mkdtempSync(join(tmpdir(), 'mutants-'));
let isGood = true;
try {
  for (const part of ['src/SetupService.Domain', 'tests/SetupService.Domain.Tests', 'tests/Shared', 'Directory.Build.props', 'Directory.Packages.props', 'global.json', '.editorconfig', 'SetupService.sln'])
    cpSync(join(root, part), join(copy, part), { recursive: true, filter: path => !/\/(bin|obj)(\/|$)/.test(path) });
  if (!build(copy, 'tests/SetupService.Domain.Tests')) throw new Error('the copy does not build');
  for (const room of rooms) {
    const draw = random(seed);
    const left = places(room, copy);
    const filter = `FullyQualifiedName~.Tests.${room}.|FullyQualifiedName~OracleTests`;
    if (!lay(copy) || notices(copy, filter) || notices(copy, '')) throw new Error(`the tests fail before ${room} is changed`);
    let tried = 0;
    let killed = 0;
    const survivors = [];
    while (tried < count && left.length > 0) {
      const [place] = left.splice(Math.floor(draw() * left.length), 1);
      const path = join(copy, place.file);
      const text = readFileSync(path, 'utf8');
      const now = text.slice(0, place.at) + place.to + text.slice(place.at + place.from.length);
      const lineOf = whole => whole.split('\n')[place.line - 1].trim();
      const told = `${place.file}:${place.line}: ${lineOf(text)} -> ${lineOf(now)}`;
      writeFileSync(path, now);
      try {
        if (!lay(copy)) continue;
        const isKilled = notices(copy, filter) || notices(copy, '');
        const why = known.find(line => line.startsWith(`${place.file}: ${lineOf(text)} -> ${lineOf(now)}: `))?.split(`${lineOf(now)}: `).pop();
        if (!isKilled && why) {
          console.log(`  lives, as known (${why}) ${told}`);
          continue;
        }

        tried++;
        if (isKilled) killed++;
        else survivors.push(told);
        if (!isKilled) console.log(`  SURVIVES ${told}`);
      } finally {
        writeFileSync(path, text);
      }
    }

    const share = tried === 0 ? 1 : killed / tried;
    isGood &&= share >= WANTED_SHARE;
    console.log(`${room}: ${killed} of ${tried} killed, ${(100 * share).toFixed(0)} %`);
  }
} finally {
  rmSync(copy, { recursive: true, force: true });
}

process.exit(isGood ? 0 : 1);
