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
export const MANY_PLAYERS = 40

/** Prints cards for so many players by words of the command line. */
export type PrintsField = (count: number, words: readonly string[]) => ReturnType<typeof timedRun>

/** Hands on what prints cards of the example course, in a folder of its own and from a bundle of its own, and clears both away. */
export async function withField<T>(work: (prints: PrintsField) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'marram-cards-'))
  const bundle = join(ROOT, 'dist/bench-cards')
  try {
    buildBundle(bundle)
    return await work((count, words) => {
      const files = Array.from({ length: count }, (_, index) => inventedPlayer(folder, index, MANY_PLAYERS))
      const field = files.flatMap((file) => ['--player', file])
      return timedRun(['book', COURSE, ...field, '--out', join(folder, 'field.pdf'), ...words], bundle)
    })
  } finally {
    rmSync(folder, { recursive: true, force: true })
    rmSync(bundle, { recursive: true, force: true })
  }
}

/** Cards that need no plan, of half a field and of all of it: how laying out and printing grow. Plans: `npm run bench-cards`. */
export function cardFigures(): Promise<Figure[]> {
  return withField(async (prints) => {
    const words = ['--kind', 'caddie', '--hole', 'all', '--workers', '2']
    const few = await prints(MANY_PLAYERS / 2, words)
    const many = await prints(MANY_PLAYERS, words)
    const names = [MANY_PLAYERS / 2, MANY_PLAYERS].map((count) => `caddies’ cards of ${count} players`)
    const of = (unit: Figure['unit'], key: 'milliseconds' | 'megabytes'): Figure[] => {
      const [fewNamed, manyNamed] = names.map((name) => (unit === 'MB' ? `${name}, peak memory` : name))
      return [
        { name: fewNamed as string, unit, median: few[key], ratio: null, against: null },
        {
          name: manyNamed as string,
          unit,
          median: many[key],
          ratio: many[key] / few[key],
          against: fewNamed as string,
        },
      ]
    }
    return [...of('ms', 'milliseconds'), ...of('MB', 'megabytes')]
  })
}
