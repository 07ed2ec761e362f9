import type { Hole } from '#golf/course/hole.ts'
import type { Flip } from '#golf/strategy/plan.ts'
import type { Reader } from './desk/desk.ts'
import { length, windSpeed } from './words.ts'

/** A flip that was found: what changes, how far, and the club it changes to. */
export type FoundFlip = Flip & { readonly at: number; readonly club: string }

/** True when the change was found within what is likely. */
export function isFound(flip: Flip): flip is FoundFlip {
  return flip.at !== null && flip.club !== null
}

/** What changes and how far, short enough for the ruler: `4 m/s more into`. */
export function flipLabel(flip: FoundFlip, hole: Hole, reader: Reader): string {
  switch (kindOf(flip)) {
    case 'wind':
      return isTouch(flip, 0.5)
        ? `the least wind ${flip.direction}`
        : `${windSpeed(flip.at, reader)} more ${flip.direction}`
    case 'firmness':
      return `ground ${flip.direction}, × ${flip.at.toFixed(1)}`
    case 'spread':
      return isTouch(flip, 0.05, 1)
        ? `spread a touch ${flip.direction}`
        : `spread ${flip.direction}, × ${flip.at.toFixed(1)}`
    default:
      return `${hazardWords(flip, hole)} ${isTouch(flip, 0.5) ? 'a touch' : length(flip.at, reader)} ${flip.direction}`
  }
}

/** True when rounding would hide the change. */
function isTouch(flip: FoundFlip, least: number, from = 0): boolean {
  return Math.abs(flip.at - from) < least
}

/** A flip as a sentence. */
export function flipSentence(flip: FoundFlip, hole: Hole, reader: Reader): string {
  const label = flipLabel(flip, hole, reader)
  return `${label.charAt(0).toUpperCase()}${label.slice(1)}: the ${flip.club}.`
}

/** What was looked for and not found, in one sentence; `null` when everything was found. */
export function silentFlips(flips: readonly Flip[], hole: Hole): string | null {
  const silent = flips.filter((flip) => !isFound(flip))
  const of = (kind: string): readonly Flip[] => silent.filter((flip) => kindOf(flip) === kind)
  const directions = (kind: string): string =>
    of(kind)
      .map((flip) => flip.direction)
      .join(' or ')
  const winds = of('wind')
  const words = [
    ...(winds.length === 0 ? [] : [winds.length === 4 ? 'wind from any side' : `wind ${directions('wind')}`]),
    ...(of('firmness').length === 0 ? [] : [`${directions('firmness')} ground`]),
    ...(of('spread').length === 0 ? [] : [`a ${directions('spread')} spread`]),
    ...of('hazard')
      .slice(0, 1)
      .map((flip) => `${hazardWords(flip, hole)} ${directions('hazard')}`),
  ]
  if (words.length === 0) return null
  const list = words.length === 1 ? words[0] : `${words.slice(0, -1).join(', ')}, ${words.at(-1)}`
  return `Within what is likely these would not change the club: ${list}.`
}

function kindOf(flip: Flip): string {
  return flip.what.split(':')[0] ?? flip.what
}

/** `hazard:water-left` → `water left`; an area's own name as it stands. */
function hazardWords(flip: Flip, hole: Hole): string {
  const name = flip.what.slice('hazard:'.length)
  const isNamed = hole.areas.some((area) => area.name === name)
  return isNamed ? name : name.replace('out-of-bounds', 'out of bounds').replaceAll('-', ' ')
}
