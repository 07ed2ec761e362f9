import type { Trial } from './false-clear-trials.ts'

/** Trials with a verdict, and how many of them name a club that is truly worse. */
export interface Tally {
  readonly count: number
  readonly wrong: number
}

/** How often one verdict was given, and how often it was wrong. */
export function tallyOf(trials: readonly Trial[], verdict: Trial['verdict']): Tally {
  const called = trials.filter((trial) => trial.verdict === verdict)
  return { count: called.length, wrong: called.filter(({ trueCost }) => trueCost > 0).length }
}

/** Two clubs this far apart, strokes, truly differ; closer than the second figure they are near-equal. The limits of a verdict. */
const DIFFERENT = 0.08
const NEAR_EQUAL = 0.03

/** The study as a table of Markdown, a row for each number of shots, in per cent. */
export function falseClearTable(trials: readonly Trial[]): string {
  const rows = [...new Set(trials.map(({ shots }) => shots))].map((shots) => {
    const own = trials.filter((trial) => trial.shots === shots)
    const [tooClose, close, clear] = (['too-close', 'close', 'clear'] as const).map((one) =>
      tallyOf(own, one),
    )
    const different = own.filter(({ trueGap }) => trueGap >= DIFFERENT)
    const apart = different.filter(({ verdict }) => verdict !== 'too-close')
    const equal = own.filter(({ trueGap }) => trueGap < NEAR_EQUAL)
    return [
      String(shots),
      ...[tooClose, close, clear].map((one) => percent(one?.count, own.length)),
      percent(close?.wrong, close?.count),
      percent(clear?.wrong, clear?.count),
      percent(apart.length, different.length),
      percent(equal.length - tallyOf(equal, 'clear').count, equal.length),
    ]
  })
  return [HEADINGS, HEADINGS.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n')
}

const HEADINGS = [
  'shots with each club',
  'too close',
  'close',
  'clear',
  'wrong of the close',
  'wrong of the clear',
  `of clubs truly ${DIFFERENT} apart or more: told apart`,
  `of clubs truly under ${NEAR_EQUAL} apart: not called clear`,
]

function percent(part = 0, whole = 0): string {
  return whole === 0 ? '–' : `${Math.round((100 * part) / whole)}`
}
