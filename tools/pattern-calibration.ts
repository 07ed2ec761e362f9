// Writes docs/pattern-calibration.md: whether the intervals of learned patterns hold what they say.
// `npm run pattern-calibration -- --players 500`
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { calibrationPage } from './pattern-calibration/calibration-page.ts'
import { calibrationTrials } from './pattern-calibration/calibration-trials.ts'
import { chancesOfChange } from './pattern-calibration/change-trials.ts'
import { lieTrials } from './pattern-calibration/lie-trials.ts'
import { studyPlayers } from './pattern-calibration/study-players.ts'

const { values } = parseArgs({ options: { players: { type: 'string', default: '500' } } })
const players = Number(values.players)
const changing = Math.ceil(players / 5)
const told =
  (all: number) =>
  (done: number): void => {
    if (done % 25 === 0) process.stderr.write(`${done} of ${all} players\n`)
  }
const guesses = studyPlayers()
const trials = calibrationTrials({ guesses, players, shots: [5, 20, 80, 300], seed: 10_000 }, told(players))
const changes = chancesOfChange(
  { guesses, players: changing, before: 100, after: 60, seed: 50_000 },
  told(changing),
)
const ofLies = Math.ceil((2 * players) / 5)
const lies = lieTrials({ guesses, players: ofLies, fairway: 40, shots: [3, 30], seed: 90_000 })
writeFileSync(
  fileURLToPath(new URL('../docs/pattern-calibration.md', import.meta.url)),
  calibrationPage(
    trials,
    { players: changing, trials: changes },
    { players: ofLies, trials: lies },
    `npm run pattern-calibration -- --players ${players}`,
  ),
)
