import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { inventedPlayer } from './invented-player.ts'
import type { Figure } from './measure.ts'
import { buildBundle, type TimedRun, timedRun } from './timed-run.ts'

const ROOT = fileURLToPath(new URL('..', import.meta.url))
const COURSE = join(ROOT, 'examples/sandrel-ness.course.geojson')
/** What a club asks for. */
export const FIELD_PLAYERS = 40

/** Cards that need no plan, of half a field and of all of it: how laying out and printing grow. */
export function cardFigures(): Promise<readonly Figure[]> {
  return grown('caddies’ cards', FIELD_PLAYERS, ['--hole', 'all', '--kind', 'caddie'])
}

/** Cards with plans by quick settings, of half of so many players and of all of them, of every hole or of one. */
export function plannedCardFigures(players: number, hole: string): Promise<readonly Figure[]> {
  return grown(`planned cards, hole ${hole},`, players, ['--hole', hole, '--quick'])
}

/** Wall time and peak memory of `marram book` on two threads, of half of so many players and of all of them. */
async function grown(what: string, players: number, words: readonly string[]): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'marram-cards-'))
  const bundle = join(ROOT, 'dist/bench-cards')
  try {
    buildBundle(bundle)
    const half = Math.ceil(players / 2)
    const runs = [await printed(half), await printed(players)] as const
    return [
      ...grows(runs, '', 'ms', 'milliseconds'),
      // Of what else the machine does, this is told the least.
      ...grows(runs, ', processor time', 'ms', 'processorMilliseconds'),
      ...grows(runs, ', peak memory', 'MB', 'megabytes'),
    ]

    function grows(
      [few, many]: readonly [TimedRun, TimedRun],
      which: string,
      unit: Figure['unit'],
      key: 'milliseconds' | 'processorMilliseconds' | 'megabytes',
    ): Figure[] {
      const name = (count: number): string => `${what} of ${count} players${which}`
      return [
        { name: name(half), unit, median: few[key], ratio: null, against: null },
        { name: name(players), unit, median: many[key], ratio: many[key] / few[key], against: name(half) },
      ]
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
    rmSync(bundle, { recursive: true, force: true })
  }

  async function printed(count: number): Promise<TimedRun> {
    // Every other player of the field for half of it: clubs and spreads go from the first player to the last.
    const step = players / count
    const files = Array.from({ length: count }, (_, index) =>
      inventedPlayer(folder, Math.floor(index * step), players),
    )
    const field = files.flatMap((file) => ['--player', file])
    const asked = ['book', COURSE, ...field, '--out', join(folder, 'field.pdf'), '--workers', '2', ...words]
    return timedRun(asked, bundle)
  }
}
