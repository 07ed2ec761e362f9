// A page of every drawing test: `npx tsx tools/pictures.ts` draws them, writes dist/pictures.html and says which
// changed; with `--accept` the changed ones become the expected ones.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { basename, extname, join } from 'node:path'

const folder = 'test/golden/expected'
spawnSync('npx', ['vitest', 'run', 'test/golden', '--reporter=dot'], { stdio: 'ignore' })

const changed = readdirSync(folder).filter((file) => file.includes('.changed.'))
if (process.argv.includes('--accept'))
  for (const file of changed) renameSync(join(folder, file), join(folder, file.replace('.changed.', '.')))

const figures = readdirSync(folder)
  .filter((file) => /\.(svg|png)$/.test(file))
  .sort()
  .map(
    (file) =>
      `<figure><figcaption>${basename(file, extname(file))}</figcaption><img alt="" src="data:image/${file.endsWith('.svg') ? 'svg+xml' : 'png'};base64,${readFileSync(join(folder, file)).toString('base64')}"></figure>`,
  )
mkdirSync('dist', { recursive: true })
writeFileSync(
  'dist/pictures.html',
  `<!doctype html><meta charset="utf-8"><title>Pictures</title><style>body{font-family:serif;display:flex;flex-wrap:wrap;gap:2rem}figure{margin:0}</style>${figures.join('\n')}\n`,
)
console.log(`dist/pictures.html: ${figures.length} pictures, ${changed.length} changed`)
for (const file of changed) console.log(`  ${file}`)
