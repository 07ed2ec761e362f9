// `npm start` on a fresh machine: installs and builds what is missing, says one plan of the invented course in plain
// words, and serves the hole desk. Nothing here may import a package: it runs before there is one.
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { installWhenMissing } from './install-when-missing.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
process.chdir(root)
installWhenMissing(root)
const { buildWhenChanged } = await import('./build.mjs')
await buildWhenChanged()

const SAMPLE = ['plan', 'examples/course.geojson', '--player', 'examples/player.player.json', '--hole', '7']
const marram = (...words) => [process.execPath, ['bin/marram.js', ...words], { stdio: 'inherit' }]
spawnSync(...marram(...SAMPLE))
console.log('')
const desk = spawnSync(...marram('serve', ...(process.env.PORT ? ['--port', process.env.PORT] : [])))
process.exit(desk.status ?? 0)
