import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Figure } from './measure.ts'

const FILE = fileURLToPath(new URL('./baseline.json', import.meta.url))

/** Figures of an earlier quiet run, by name; none where none were kept. To compare with, never to pass or fail by. */
export function baseline(): ReadonlyMap<string, Figure> {
  const kept: readonly Figure[] = existsSync(FILE) ? JSON.parse(readFileSync(FILE, 'utf8')) : []
  return new Map(kept.map((figure) => [figure.name, figure]))
}

/** Keeps figures for later runs to be compared with, rounded to what means something. */
export function keepBaseline(figures: readonly Figure[]): void {
  const rounded = figures.map(({ median, ratio, ...figure }) => ({
    ...figure,
    median: Number(median.toPrecision(4)),
    ratio: ratio === null ? null : Number(ratio.toPrecision(4)),
  }))
  writeFileSync(FILE, `${JSON.stringify(rounded, null, 2)}\n`)
}

/** A figure in one line, its ratio beside the one that was kept. */
export function lineOf({ name, unit, median, ratio, against }: Figure, kept: Figure | undefined): string {
  const time = `${name.padEnd(42)} ${median.toFixed(1).padStart(9)} ${unit}`
  if (ratio === null) return time
  const before = kept?.against === against ? kept.ratio : null
  return `${time}  ${ratio.toFixed(4)} of ${against}${before === null ? '' : ` (kept: ${before.toFixed(4)})`}`
}
