import { METRES_PER_YARD } from '#numbers/units/units.ts'
import { LIKELY_CHANGE } from './bag-settings.ts'
import { clubWords } from './club-words.ts'
import type { LearnedClub } from './learn-player.ts'

type Units = 'yards' | 'metres'

/** The numbers of a club whose change is told, with the words for them. */
const NUMBERS = [
  ['carry', 'carry'],
  ['run', 'run'],
  ['directionSd', 'spread of direction'],
  ['side', 'side of the misses'],
  ['carrySd', 'spread of carry'],
  ['mishit', 'mishits'],
] as const

/** A number of a club that was known before, and the chance that it has really changed. */
export interface AskedChange {
  readonly club: string
  readonly number: (typeof NUMBERS)[number][0]
  /** What the number is: `spread of carry`. */
  readonly words: string
  readonly before: number
  readonly after: number
  /** Where it lies nine times in ten by the shots. */
  readonly ninety: readonly [low: number, high: number]
  readonly chance: number
}

/** Every number of these clubs that can be held against one from before, the surest change first. */
export function askedChanges(clubs: readonly LearnedClub[]): AskedChange[] {
  return clubs
    .flatMap(({ name, numbers }) =>
      NUMBERS.flatMap(([number, words]): AskedChange[] => {
        const { before, after, ninety, chanceOfChange } = numbers[number]
        return chanceOfChange === null
          ? []
          : [{ club: name, number, words, before, after, ninety, chance: chanceOfChange }]
      }),
    )
    .sort((a, b) => b.chance - a.chance)
}

/** Whether the shots speak so much for a change that it is told as one. */
export function isLikely({ chance }: AskedChange): boolean {
  return chance >= LIKELY_CHANGE
}

/** Whether the shots are sure that the number is another one, though not that it has changed: it may have been off before. */
export function isOff(change: AskedChange): boolean {
  const [low, high] = change.ninety
  return !isLikely(change) && (change.before < low || change.before > high)
}

/** `driver, carry: 27 yd longer than was known; it has changed, or was off before`. */
export function offLine(change: AskedChange, units: Units): string {
  const { club, words } = change
  return `${clubWords(club)}, ${words}: ${changeWords(change, units)}; it has changed, or was off before`
}

/** `7-iron, carry: 8 yd longer than was known; 99 chances in 100`. */
export function changeLine(change: AskedChange, units: Units): string {
  const { club, words } = change
  return `${clubWords(club)}, ${words}: ${changeWords(change, units)}; ${chanceText(change)} chances in 100`
}

/** The change of one club in sentences for its picture: what has really changed, and what cannot be told. */
export function clubChangeSentences(club: LearnedClub, units: Units): string[] {
  if (club.shots === 0) return ['No shot with this club: nothing was learned of it but by the other clubs.']
  const asked = askedChanges([club])
  if (asked.length === 0) return ['What was held before was a guess: there is no change to speak of.']
  const rest = asked.filter((change) => !isLikely(change) && !isOff(change))
  return [
    ...asked
      .filter(isLikely)
      .map(
        (change) =>
          `The ${change.words}: ${changeWords(change, units)}; ${chanceText(change)} chances in 100 that it has really changed.`,
      ),
    ...asked
      .filter(isOff)
      .map(
        (change) => `The ${change.words}: ${changeWords(change, units)}; it has changed, or was off before.`,
      ),
    ...(rest.length === 0
      ? []
      : [
          `No change, or too few shots to tell: ${rest.map((change) => `${change.words} (${chanceText(change)} in 100)`).join(', ')}.`,
        ]),
  ]
}

function chanceText({ chance }: AskedChange): string {
  return String(Math.min(99, Math.round(100 * chance)))
}

function changeWords({ number, before, after }: AskedChange, units: Units): string {
  if (number === 'carry' || number === 'run') {
    const by = `${lengthFigure(Math.abs(after - before), units)} ${units === 'yards' ? 'yd' : 'm'}`
    return `${by} ${after > before ? 'longer' : 'shorter'} than was known`
  }
  if (number === 'side') return `more to the ${after > before ? 'left' : 'right'} than was known`
  if (number === 'mishit') return after > before ? 'more than was known' : 'fewer than was known'
  return after > before ? 'wider than was known' : 'tighter than was known'
}

/** Metres as a whole number of the reader's units. */
export function lengthFigure(metres: number, units: Units): string {
  const whole = Math.round(units === 'yards' ? metres / METRES_PER_YARD : metres)
  return String(whole === 0 ? 0 : whole)
}
