import { askedChanges, changeLine, isLikely, isOff, lengthFigure, offLine } from './change-words.ts'
import { clubWords } from './club-words.ts'
import { intervals } from './learn/summarise.ts'
import type { LearnedFromShots } from './learn-from-shots.ts'
import type { LearnedClub } from './learn-player.ts'
import type { Club, Player } from './player.ts'
import { questionsOfShots } from './questions-of-shots.ts'

/** A number of a club before and after shots, in figures for a person. */
export interface LearnedFigure {
  /** Whether it was a guess before. */
  readonly wasGuess: boolean
  readonly before: string
  readonly after: string
  /** Where it lies nine times in ten; `null` without shots of the club's own. */
  readonly between: readonly [low: string, high: string] | null
}

/** One club before and after shots: lengths in the reader's units, spreads in degrees on that side of the aim, mishits in per cent. */
export interface LearnedRow {
  readonly club: string
  readonly shots: number
  readonly carry: LearnedFigure
  readonly total: LearnedFigure
  readonly left: LearnedFigure
  readonly right: LearnedFigure
  readonly mishits: LearnedFigure
}

type Units = 'yards' | 'metres'

/** What shots made of every club, in figures, in the order of the bag. */
export function learnedRows({ before, learned }: LearnedFromShots, units: Units): readonly LearnedRow[] {
  return learned.clubs.flatMap((one, index) => {
    const [old, now] = [before.clubs[index], learned.player.clubs[index]]
    return old === undefined || now === undefined ? [] : [learnedRow(one, old, now, before, units)]
  })
}

function learnedRow(one: LearnedClub, old: Club, now: Club, player: Player, units: Units): LearnedRow {
  const figureOf =
    (words: (value: number) => string, ...fields: readonly string[]) =>
    (was: number, is: number, ninety: readonly [number, number] | null): LearnedFigure => ({
      wasGuess: fields.some((field) => player.guesses.has(`clubs.${old.name}.${field}`)),
      before: words(was),
      after: words(is),
      between: ninety === null || one.shots === 0 ? null : [words(ninety[0]), words(ninety[1])],
    })
  const length = (metres: number): string => lengthFigure(metres, units)
  const degrees = (value: number): string => value.toFixed(1)
  const percent = (share: number): string => String(Math.round(100 * share))
  const { carry, mishit } = one.numbers
  const [left, right] = sideSpreads(one, old)
  const { leftShare, rightShare, directionSdDegrees: is } = now
  const was = old.directionSdDegrees
  return {
    club: clubWords(old.name),
    shots: one.shots,
    carry: figureOf(length, 'carry_m')(old.carryMetres, now.carryMetres, carry.ninety),
    total: figureOf(length, 'total_m')(old.totalMetres, now.totalMetres, null),
    left: figureOf(degrees, 'direction_sd_deg', 'left_share')(was * old.leftShare, is * leftShare, left),
    right: figureOf(degrees, 'direction_sd_deg', 'right_share')(was * old.rightShare, is * rightShare, right),
    mishits: figureOf(percent, 'mishit_share')(old.mishitShare, now.mishitShare, mishit.ninety),
  }
}

/** Where the spreads to the left and to the right lie nine times in ten: draw by draw, as the shares are written into the player. */
function sideSpreads(
  { numbers: { directionSd, side } }: LearnedClub,
  { leftShare, rightShare }: Club,
): readonly [left: readonly [number, number], right: readonly [number, number]] {
  const size = Math.sqrt(leftShare * rightShare)
  const ratio = side.draws.map((toLeft) => Math.sqrt(toLeft / (1 - toLeft)))
  const ends = (of: (sd: number, ratio: number) => number): readonly [number, number] =>
    intervals(directionSd.draws.map((sd, draw) => of(sd, ratio[draw] as number))).ninety
  return [ends((sd, toLeft) => sd * size * toLeft), ends((sd, toLeft) => (sd * size) / toLeft)]
}

/** Numbers that were known before and that the shots speak against, the surest first; or that the shots do not tell. */
export function changeLines({ learned }: LearnedFromShots, units: Units): readonly string[] {
  const asked = askedChanges(learned.clubs)
  if (asked.length === 0) return ['nothing to compare: the numbers before were guesses']
  const told = [
    ...asked.filter(isLikely).map((change) => changeLine(change, units)),
    ...asked.filter(isOff).map((change) => offLine(change, units)),
  ]
  if (told.length > 0) return told
  return [
    `not to be told in ${asked.length} number${asked.length === 1 ? '' : 's'}: too few shots, or no more than the known number may have been off`,
  ]
}

/** What became of the shots beyond the clubs' numbers: strays, clubs that are new in the bag, and what a person should be asked. */
export function usedLines(known: LearnedFromShots): readonly string[] {
  const { bag, learned } = known
  const strays = learned.clubs.reduce((sum, club) => sum + Math.round(club.strays), 0)
  return [
    ...(strays === 0
      ? []
      : [
          `${strays} ${strays === 1 ? 'shot is' : 'shots are'} so far from the rest that ${strays === 1 ? 'it counts' : 'they count'} for next to nothing.`,
        ]),
    ...(bag.added.length === 0
      ? []
      : [`New in the bag by these shots: ${bag.added.map(clubWords).join(', ')}.`]),
    ...questionsOfShots(known),
  ]
}
