import { FINISH_LETTERS, type Finish } from '#golf/round/round.ts'
import { METRES_PER_FOOT, METRES_PER_YARD } from '#numbers/units/units.ts'

/** Units of lengths as the reader likes them. */
export type Units = 'yards' | 'metres'

/** A unit by its sign, with its metres. */
type Sizes = Readonly<Record<Units, { readonly sign: string; readonly metres: number }>>

/** What a length to the pin is typed in. */
export const LEFT: Sizes = {
  yards: { sign: 'yd', metres: METRES_PER_YARD },
  metres: { sign: 'm', metres: 1 },
}
/** What a putt is typed in. */
export const PUTT: Sizes = {
  yards: { sign: 'ft', metres: METRES_PER_FOOT },
  metres: { sign: 'm', metres: 1 },
}

/** A club as it stands on a key, and as the paper log has it: `7i`, `pw`. */
export function shortClub(name: string): string {
  const [first = '', second = ''] = name.split('-')
  if (second === '') return name
  return /^\d+$/.test(first) && second === 'wedge'
    ? `${first}°`
    : `${first.slice(0, isNumber(first) ? 2 : 1)}${second.slice(0, 1)}`
}

function isNumber(text: string): boolean {
  return /^\d+$/.test(text)
}

/** Where a stroke finished, as it was written down. */
export function finishWords(finish: Finish | null, units: Units): string {
  if (finish === null) return 'holed'
  if (!('letter' in finish)) return 'on the picture'
  const { sign, metres } = LEFT[units]
  const left = finish.leftMetres === null ? '' : `, ${Math.round(finish.leftMetres / metres)} ${sign} left`
  return `${FINISH_LETTERS[finish.letter]}${left}`
}

/** Metres from what was typed; `null` when it is no length. */
export function typedMetres(text: string, metres: number): number | null {
  const value = Number(text.trim().replace(',', '.'))
  return text.trim() !== '' && value >= 0 && value < 1000 ? Math.round(value * metres * 100) / 100 : null
}
