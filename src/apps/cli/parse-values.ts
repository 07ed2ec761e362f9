import { Failure } from '#faults/failure.ts'
import { LIES, type Lie } from '#golf/player/player.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'

/** `12.5`, `12.5m` or `14yd` → metres. Throws MAR-USAGE-002. */
export function parseLength(text: string, option: string): number {
  const match = /^\s*([+-]?(?:\d+\.?\d*|\.\d+))\s*(m|yd)?\s*$/.exec(text)
  if (match === null)
    throw new Failure(
      'MAR-USAGE-002',
      `"${text}" is no distance. Write metres, or yards with yd: 190 or 208yd.`,
      option,
    )
  return Number(match[1]) * (match[2] === 'yd' ? METRES_PER_YARD : 1)
}

/** `X,Y` in the hole frame, metres or yards with a suffix: `4yd,214yd`. Throws MAR-USAGE-002. */
export function parsePoint(text: string, option: string): Point {
  const parts = text.split(',')
  if (parts.length !== 2)
    throw new Failure(
      'MAR-USAGE-002',
      `"${text}" is no place. Write how far right of the line and how far on, with a comma: 4,196 or 4yd,214yd.`,
      option,
    )
  return [parseLength(parts[0] ?? '', option), parseLength(parts[1] ?? '', option)]
}

/** `front`, `middle`, `back` or a point of the hole frame. Throws MAR-USAGE-002. */
export function parsePin(text: string): 'front' | 'middle' | 'back' | Point {
  if (text === 'front' || text === 'middle' || text === 'back') return text
  if (!text.includes(','))
    throw new Failure(
      'MAR-USAGE-002',
      `"${text}" is no hole location. Write front, middle, back, or X,Y.`,
      '--pin',
    )
  return parsePoint(text, '--pin')
}

/** One of the lies a ball can have. Throws MAR-USAGE-002. */
export function parseLie(text: string): Lie {
  const lie = LIES.find((known) => known === text)
  if (lie === undefined)
    throw new Failure('MAR-USAGE-002', `"${text}" is no lie. Write one of: ${LIES.join(', ')}.`, '--lie')
  return lie
}

/** A whole number in a range. Throws MAR-USAGE-002. */
export function parseCount(text: string, option: string, least: number, most: number): number {
  const count = Number(text)
  if (!Number.isInteger(count) || text.trim() === '' || count < least || count > most)
    throw new Failure('MAR-USAGE-002', `"${text}" is not a whole number from ${least} to ${most}.`, option)
  return count
}
