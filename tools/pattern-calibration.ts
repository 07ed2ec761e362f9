// Writes docs/pattern-calibration.md: whether the intervals of learned patterns hold what they say.
// `npm run pattern-calibration -- --players 500`
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { calibrationPage } from './pattern-calibration/calibration-page.ts'
import { calibrationTrials } from './pattern-calibration/calibration-trials.ts'
import { studyPlayers } from './pattern-calibration/study-players.ts'

const { values } = parseArgs({ options: { players: { type: 'string', default: '500' } } })
const players = Number(values.players)
const trials = calibrationTrials(
  { guesses: studyPlayers(), players, shots: [5, 20, 80, 300], seed: 10_000 },
  (done) => {
    if (done % 25 === 0) console.error(`${done} of ${players} players`)
  },
)
const command = `npm run pattern-calibration -- --players ${players}`
writeFileSync(
  fileURLToPath(new URL('../docs/pattern-calibration.md', import.meta.url)),
  calibrationPage(trials, command),
)
