import { METRES_PER_YARD, metresToFeet } from '#numbers/units/units.ts'
import { askedCarries } from './asked-carries.ts'
import { clubKind } from './club-names.ts'
import { clubWords } from './club-words.ts'
import type { SureClub, SureNumber } from './how-sure.ts'
import type { SureNearGreen } from './how-sure-near-green.ts'
import type { Player } from './player.ts'

/** What was made of a player's answers and what ten shots would change, in sentences. */
export function profileWords(
  player: Player,
  clubs: readonly SureClub[],
  nearGreen: SureNearGreen,
  units: 'yards' | 'metres',
): readonly string[] {
  const { name, hand, handicapIndex, said } = player
  const known = clubs.filter(({ carryMetres }) => !carryMetres.isGuess).map((club) => clubWords(club.name))
  const index = indexWords(handicapIndex)
  const level = !player.guesses.has('handicapIndex')
    ? `is off ${index}`
    : said?.usual_score === undefined
      ? `is taken to be off ${index} by the length of the carries`
      : `is taken to be off ${index}: a usual round of ${said.usual_score}, less the 72 of a usual course, less 3 because the rounds that count are better ones`
  const carries =
    known.length === 0
      ? 'No carry is known: all are guesses from the level.'
      : `The ${listed(known)} ${known.length === 1 ? 'carries' : 'carry'} as said; the other carries are guesses between and around.`
  const spoken = [
    ['shape', said?.shape],
    ['big miss', said?.big_miss],
    ['mishits', said?.mishit_share],
    ['short game', said?.up_and_down_share],
    ['putting', said?.half_holed_m],
  ].flatMap(([word, value]) => (value === undefined ? [] : [String(word)]))
  const rest =
    spoken.length === 0
      ? 'Spreads, mishits, short game and putting are guesses from the level.'
      : `Spreads and the rest are guesses from the level, moved by what was said of ${listed(spoken)}.`
  return [
    `${name}, ${hand === 'right' ? 'right-handed' : 'left-handed'}, ${level}. ${carries} ${rest}`,
    ...askedCarries(player, units),
    nearGreenWords(nearGreen, units),
    ...shotsWords(clubs, units),
  ]
}

/** Short game and putting, in what can be counted. */
function nearGreenWords(
  { upAndDownShare, halfHoledMetres }: SureNearGreen,
  units: 'yards' | 'metres',
): string {
  const percent = (share: number): string => `${Math.round(100 * share)}`
  const length = (metres: number): string => (units === 'yards' ? metresToFeet(metres) : metres).toFixed(1)
  const sign = units === 'yards' ? 'ft' : 'm'
  const [from, holed, putts] = [units === 'yards' ? '22 yd' : '20 m', upAndDownShare, halfHoledMetres]
  return `Of 100 chips from ${from} of short grass ${percent(holed.value)} are holed in two (${percent(holed.low)} to ${percent(holed.high)} for eight in ten such players), and every second putt is holed from ${length(putts.value)} ${sign} (${length(putts.low)} to ${length(putts.high)}).`
}

/** What ten shots would tell, by a club of middle length. */
function shotsWords(clubs: readonly SureClub[], units: 'yards' | 'metres'): string[] {
  const [club] = clubs.toSorted((a, b) => fromMiddle(a) - fromMiddle(b))
  if (club === undefined) return []
  const metres = units === 'yards' ? METRES_PER_YARD : 1
  const sign = units === 'yards' ? 'yd' : 'm'
  const half = ({ low, high }: { low: number; high: number }): string =>
    ((high - low) / 2 / metres).toFixed(1).replace(/^(\d\d+)\.\d$/, '$1')
  const change = (number: SureNumber): string => `from ± ${half(number)} to ± ${half(number.then)} ${sign}`
  const rate = (share: number): string => `${Math.round(100 * share)}`
  const { low, high, then } = club.mishitShare
  return [
    `Ten measured shots with the ${clubWords(club.name)} would narrow its carry ${change(club.carryMetres)} and its sideways spread ${change(club.spreadMetres)}; its mishits, now between ${rate(low)} and ${rate(high)} in 100, would lie between ${rate(then.low)} and ${rate(then.high)}: they take a season to know.`,
  ]
}

/** A 7-iron is what most lessons begin with. */
function fromMiddle({ name }: SureClub): number {
  return Math.abs((clubKind(name)?.loftDegrees ?? 90) - 34)
}

/** A handicap index as it is written: plus players with their sign. */
function indexWords(handicapIndex: number): string {
  const figure = Math.abs(handicapIndex).toFixed(1)
  return handicapIndex < 0 ? `+${figure}` : figure
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}
