import { metresToYards, yardsToMetres } from '#numbers/units/units.ts'
import { clubWords } from '../club-words.ts'
import { type AnswerFault, answerFault } from './answer-fault.ts'
import { kindOf, readClub } from './read-clubs.ts'

/** A club and how far it carries, metres. */
export interface KnownCarry {
  readonly name: string
  readonly metres: number
}

/** Driver carries between which a carry of any club is believed, metres: a small child's and beyond a tour player's. Our assumption. */
const DRIVER_CARRIES: readonly [number, number] = [40, 330]
/** A shorter club may carry this much more than a longer one before it is asked about. Our assumption. */
const OUT_OF_ORDER = 1.04

/**
 * Carries such as `driver 205, 7i 138` or `7 iron: 126 m`, in the reader's units unless one follows; or what is wrong
 * with them.
 */
export function readCarries(text: string, units: 'yards' | 'metres'): readonly KnownCarry[] | AnswerFault {
  const carries: KnownCarry[] = []
  for (const part of text.split(/[,;\n]/).map((one) => one.trim())) {
    if (part === '') continue
    const carry = readCarry(part, units)
    if ('code' in carry) return carry
    if (carries.some(({ name }) => name === carry.name))
      return answerFault(
        'MAR-ANSWER-005',
        `The ${clubWords(carry.name)} is there twice.`,
        'Give it one carry.',
      )
    carries.push(carry)
  }
  return outOfOrder(carries, units) ?? carries
}

function readCarry(part: string, units: 'yards' | 'metres'): KnownCarry | AnswerFault {
  const found = /^(.+?)[\s:=]+(\d{1,3}(?:\.\d+)?) ?(m|metres?|meters?|yd|yds|yards?)?$/i.exec(part)
  const advice = 'Write the club and how far it carries, such as 7i 138; commas between them.'
  if (found === null) return answerFault('MAR-ANSWER-007', `"${part}" is not a club and a carry.`, advice)
  const [, word = '', figure, unit = units] = found
  const name = readClub(word)
  if (typeof name !== 'string') return name
  if (name === 'putter') return answerFault('MAR-ANSWER-007', 'A putter has no carry.', 'Leave it out.')
  const isMetres = unit.toLowerCase().startsWith('m')
  const metres = isMetres ? Number(figure) : yardsToMetres(Number(figure))
  const share = kindOf(name).carryShare
  const [least, most] = DRIVER_CARRIES.map((driver) => driver * share) as [number, number]
  if (metres < least || metres > most) {
    const shown = [least, most].map((one) => Math.round(isMetres ? one : metresToYards(one)))
    const message = `A ${clubWords(name)} that carries ${figure} ${isMetres ? 'm' : 'yd'} is taken for a slip: from ${shown.join(' to ')} is believed.`
    return answerFault('MAR-ANSWER-003', message, 'Look at the figure and at its unit.')
  }
  return { name, metres }
}

/** A wedge that flies past a 7-iron is a slip of the pen. */
function outOfOrder(carries: readonly KnownCarry[], units: 'yards' | 'metres'): AnswerFault | null {
  const shown = (metres: number): string =>
    units === 'metres' ? `${Math.round(metres)} m` : `${Math.round(metresToYards(metres))} yd`
  const sorted = carries.toSorted((a, b) => kindOf(b.name).carryShare - kindOf(a.name).carryShare)
  for (const [index, shorter] of sorted.entries()) {
    const longer = sorted.slice(0, index).find((one) => shorter.metres > OUT_OF_ORDER * one.metres)
    if (longer === undefined) continue
    const message = `The ${clubWords(shorter.name)} would carry ${shown(shorter.metres)}, further than the ${clubWords(longer.name)} with ${shown(longer.metres)}.`
    return answerFault('MAR-ANSWER-007', message, 'Look at both, or leave out the one that is less sure.')
  }
  return null
}
