import { Failure } from '#faults/failure.ts'
import { LIE_NAMES, seenLie } from '#golf/player/lie-names.ts'
import type { SeenLie } from '#golf/player/player.ts'
import type { Stance } from '#golf/player/stance.ts'
import { MOST_STANCE_DEGREES } from '#golf/player/stance-settings.ts'
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

/** One of the lies a ball can have, with how it sits in it where that was said: `rough:down`. Throws MAR-USAGE-002. */
export function parseLie(text: string): SeenLie {
  const seen = seenLie(text)
  if (seen === null)
    throw new Failure('MAR-USAGE-002', `"${text}" is no lie. Write one of: ${LIE_NAMES.join(', ')}.`, '--lie')
  return seen
}

/** Slopes under the feet, degrees: `uphill:5`, `downhill:3,below:4`. Throws MAR-USAGE-002. */
export function parseStance(text: string): Stance {
  const slopes = { uphill: 0, downhill: 0, above: 0, below: 0 }
  const refuse = (why: string): never => {
    throw new Failure(
      'MAR-USAGE-002',
      `${why} Write slopes in degrees up to ${MOST_STANCE_DEGREES}: uphill:5 or downhill:5, above:3 or below:3 (the ball against the feet), with a comma between two.`,
      '--stance',
    )
  }
  for (const part of text.split(',')) {
    const match = /^\s*(uphill|downhill|above|below)\s*:\s*(\d+\.?\d*|\.\d+)\s*$/.exec(part)
    if (match === null) return refuse(`"${part.trim()}" is no slope under the feet.`)
    const [, name, degrees] = match as unknown as [string, keyof typeof slopes, string]
    if (slopes[name] !== 0) return refuse(`${name} is given twice.`)
    slopes[name] = Number(degrees)
    if (!(slopes[name] > 0 && slopes[name] <= MOST_STANCE_DEGREES))
      return refuse(`${degrees} degrees is no slope to swing from.`)
  }
  const { uphill, downhill, above, below } = slopes
  if (uphill * downhill !== 0 || above * below !== 0) return refuse(`"${text}" slopes both ways at once.`)
  return { uphillDegrees: uphill - downhill, aboveDegrees: above - below }
}

/** A whole number in a range. Throws MAR-USAGE-002. */
export function parseCount(text: string, option: string, least: number, most: number): number {
  const count = Number(text)
  if (!Number.isInteger(count) || text.trim() === '' || count < least || count > most)
    throw new Failure('MAR-USAGE-002', `"${text}" is not a whole number from ${least} to ${most}.`, option)
  return count
}

/** One of some words. Throws MAR-USAGE-002. */
export function parseWord<Word extends string>(text: string, words: readonly Word[], option: string): Word {
  const word = words.find((known) => known === text)
  if (word !== undefined) return word
  throw new Failure(
    'MAR-USAGE-002',
    `"${text}" is not known here. Write ${words.slice(0, -1).join(', ')} or ${words.at(-1)}.`,
    option,
  )
}
