// A monkey at the desk: clicks, drags, types and goes about by chance in headless Chromium, by real input events, with
// reloads and without the network now and then: `npm run monkey -- [--minutes 30] [--seed 1]`. Ends with 1 when the page
// threw an exception, lost an edit, or grew by more than 50 MB.
import { parseArgs } from 'node:util'
import { runMonkey } from './monkey/run-monkey.ts'
import { serveDesk } from './served-desk.ts'

/** Megabytes that half an hour may add to a page that was not loaded again. */
const MOST_GROWTH = 50

const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '30' },
    seed: { type: 'string', default: '1' },
    'acts-per-reload': { type: 'string', default: '350' },
  },
})
const desk = await serveDesk()
try {
  const end = Date.now() + Number(values.minutes) * 60_000
  const report = await runMonkey(desk, {
    seed: Number(values.seed),
    isOver: () => Date.now() > end,
    actsPerReload: Number(values['acts-per-reload']),
    secondsPerLook: 90,
    tell: console.log,
  })
  console.log(
    `Seed ${values.seed}, ${values.minutes} min: ${report.acts} acts, ${report.reloads} reloads, ${report.documents} documents kept.`,
  )
  console.log(
    `${report.exceptions.length} exceptions, ${report.lost.length} edits lost, memory grew by ${report.growth.toFixed(1)} MB at most.`,
  )
  if (report.exceptions.length > 0 || report.lost.length > 0 || report.growth > MOST_GROWTH)
    process.exitCode = 1
} finally {
  await desk.close()
}
