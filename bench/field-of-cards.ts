import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { inventedPlayer } from './invented-player.ts'
import type { Figure } from './measure.ts'
import { buildBundle, timedRun } from './timed-run.ts'

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
    const few = await printed(Math.ceil(players / 2))
    const many = await printed(players)
    const name = (count: number): string => `${what} of ${count} players`
    const memory = (count: number): string => `${name(count)}, peak memory`
    return [
      { name: name(few.count), unit: 'ms', median: few.milliseconds, ratio: null, against: null },
      {
        name: name(players),
        unit: 'ms',
        median: many.milliseconds,
        ratio: many.milliseconds / few.milliseconds,
        against: name(few.count),
      },
      { name: memory(few.count), unit: 'MB', median: few.megabytes, ratio: null, against: null },
      {
        name: memory(players),
        unit: 'MB',
        median: many.megabytes,
        ratio: many.megabytes / few.megabytes,
        against: memory(few.count),
      },
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
    rmSync(bundle, { recursive: true, force: true })
  }

  async function printed(count: number): Promise<{
    readonly count: number
    readonly milliseconds: number
    readonly megabytes: number
  }> {
    // Every other player of the field for half of it: clubs and spreads go from the first player to the last.
    const step = players / count
    const files = Array.from({ length: count }, (_, index) =>
      inventedPlayer(folder, Math.floor(index * step), players),
    )
    const field = files.flatMap((file) => ['--player', file])
    const asked = ['book', COURSE, ...field, '--out', join(folder, 'field.pdf'), '--workers', '2', ...words]
    return { count, ...(await timedRun(asked, bundle)) }
  }
}
