// `npm start` on a fresh machine: installs and builds what is missing, says one plan of the invented course in plain
// words, and serves the hole desk. Nothing here may import a package: it runs before there is one.
import { spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { installWhenMissing } from './install-when-missing.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
process.chdir(root)
installWhenMissing(root)
const { buildWhenChanged, samplePlan } = await import('./build.mjs')
await buildWhenChanged()
console.log(await samplePlan())
const port = process.env.PORT ? ['--port', process.env.PORT] : []
const desk = spawn(process.execPath, ['bin/marram.js', 'serve', ...port], { stdio: 'inherit' })
// Ctrl-C reaches the desk by itself; a signal sent to this process alone is passed on, so that no desk is left behind.
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => desk.kill(signal))
// When npm is killed its child is not told: without it nobody could stop the desk, so the desk goes with it.
const parent = process.ppid
if (process.env.npm_lifecycle_event)
  setInterval(() => process.ppid === parent || desk.kill('SIGTERM'), 1000).unref()
desk.on('exit', (code) => process.exit(code ?? 0))
