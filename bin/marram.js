#!/usr/bin/env node
// Runs the bundle when it is there and no source is newer, else the sources themselves. MARRAM_BUNDLE names another
// bundle, which is then taken as it is.
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const home = fileURLToPath(new URL('..', import.meta.url))
const named = process.env.MARRAM_BUNDLE
const bundle = named ?? join(home, 'dist/marram.js')
const sources = join(home, 'src')

// A reader that has seen enough, such as `head`, is no failure; a full disk is one that a person can mend.
process.stdout.on('error', (error) => {
  if (error.code === 'EPIPE') return
  process.stderr.write(`MAR-FILE-006 The answer cannot be written (${error.code}).\n`)
  process.exit(2)
})

const { runMarram } = await load()
process.exitCode = await runMarram(process.argv.slice(2), {
  version: JSON.parse(readFileSync(join(home, 'package.json'), 'utf8')).version,
  home,
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  isWatched: process.stderr.isTTY === true,
  canAsk: process.stdin.isTTY === true && process.stderr.isTTY === true,
  hasColour: process.stdout.isTTY === true && !process.env.NO_COLOR,
})

async function load() {
  if (named !== undefined || isFresh()) return import(pathToFileURL(bundle).href)
  try {
    const { register } = await import('tsx/esm/api')
    register()
  } catch {
    process.stderr.write('Marram is not installed yet. Run `npm start` or `npm test` once in its folder.\n')
    process.exit(2)
  }
  return import(pathToFileURL(join(sources, 'apps/cli/run-marram.ts')).href)
}

function isFresh() {
  if (!existsSync(bundle)) return false
  const built = statSync(bundle).mtimeMs
  return !existsSync(sources) || newest(sources) <= built
}

function newest(folder) {
  let latest = 0
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) latest = Math.max(latest, newest(path))
    else if (/(?<!\.test)\.ts$/.test(entry.name)) latest = Math.max(latest, statSync(path).mtimeMs)
  }
  return latest
}
