// `npm start` on a fresh machine: installs and builds what is missing, says one plan of the invented course in plain
// words, and serves the hole desk. Nothing here may import a package: it runs before there is one.
import { spawn, spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { installWhenMissing } from './install-when-missing.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
process.chdir(root)
installWhenMissing(root)
const { buildWhenChanged } = await import('./build.mjs')
await buildWhenChanged()

const marram = (...words) => [process.execPath, ['bin/marram.js', ...words], { stdio: 'inherit' }]
spawnSync(
  ...marram(
    'plan',
    'examples/sandrel-ness.course.geojson',
    '--player',
    'examples/aldous-brack.player.json',
    '--hole',
    '7',
  ),
)
console.log('')
const desk = spawn(...marram('serve', ...(process.env.PORT ? ['--port', process.env.PORT] : [])))
// Ctrl-C reaches the desk by itself; a signal sent to this process alone is passed on, so that no desk is left behind.
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => desk.kill(signal))
desk.on('exit', (code) => process.exit(code ?? 0))
