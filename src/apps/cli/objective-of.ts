import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Player } from '#golf/player/player.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { matchStrokes } from '#golf/rules/match-strokes.ts'
import { strokesReceived } from '#golf/rules/strokes-received.ts'
import { holeScores } from '#golf/strategy/hole-scores.ts'
import { chancesOfLaterHoles } from '#golf/strategy/later-holes.ts'
import { matchStakes } from '#golf/strategy/match-stakes.ts'
import {
  atMostObjective,
  holeChances,
  matchObjective,
  type Objective,
  ONE_HOLE,
  pointMass,
  pointsObjective,
  targetObjective,
} from '#golf/strategy/objective.ts'
import { handicapOn } from './handicap-on.ts'
import { loadPlayer } from './load-player.ts'
import type { AskedObjective } from './parse-objective.ts'

/** Where an objective is played for. */
export interface ObjectiveSetting {
  readonly course: Course
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
}

/**
 * What every score is worth, from what was asked: handicap strokes are counted by the card where they are not given, an
 * opponent in a file is planned on the same holes, and holes that count too are worked out first. Throws what is wrong with
 * that file, and MAR-USAGE-002 for a last hole that does not follow.
 */
export function objectiveOf(asked: AskedObjective, setting: ObjectiveSetting): Objective {
  if (asked.kind === 'at-most') return targetOf(asked, setting)
  if (asked.kind === 'match') return matchOf(asked, setting)
  const { hole, player } = setting
  const own = handicapOf(setting, player, HANDICAP_ALLOWANCES['Individual Stableford'])
  const { received, notes } = counted(asked.received, hole, own === null ? null : [own, 0])
  return pointsObjective(hole.par, received, { played: asked.played, notes })
}

function targetOf(
  { strokes, through, played }: AskedObjective & { readonly kind: 'at-most' },
  setting: ObjectiveSetting,
): Objective {
  if (through === undefined) return atMostObjective(strokes, { played, notes: [] })
  const { hole, player, day } = setting
  const later = holesAfter(setting, through)
  const chances = chancesOfLaterHoles(later, player, day, Math.max(0, strokes - 1))
  const aim = `${strokes} or better on holes ${hole.ref} to ${through}`
  const notes = ['The holes after this one are planned for the same target.']
  return targetObjective(strokes, chances, aim, { played, notes })
}

function matchOf(
  { opponent: against, received: given, match, played }: AskedObjective & { readonly kind: 'match' },
  setting: ObjectiveSetting,
): Objective {
  const { hole, player, day } = setting
  const later = match?.through === undefined ? [] : holesAfter(setting, match.through)
  const aim = match === undefined ? 'the hole' : 'the match'
  if (typeof against === 'number') {
    const stakes = match === undefined ? ONE_HOLE : matchStakes(match.up, [])
    return matchObjective(pointMass(against), given ?? 0, { played, notes: [] }, stakes, aim)
  }
  const opponent = loadPlayer(against)
  const allowance = HANDICAP_ALLOWANCES['Individual match play']
  const handicaps = [player, opponent].map((one) => handicapOf(setting, one, allowance))
  const [own, theirs] = handicaps
  const differences = own == null || theirs == null ? null : (matchStrokes([own, theirs]) as [number, number])
  const { received, notes } = counted(given, hole, differences)
  const laterChances = later.map((one) =>
    holeChances(
      holeScores(one, player, day),
      holeScores(one, opponent, day),
      counted(undefined, one, differences).received,
    ),
  )
  const stakes = match === undefined ? ONE_HOLE : matchStakes(match.up, laterChances)
  const others = later.length > 0 ? ', and on later holes so are you' : ''
  return matchObjective(
    holeScores(hole, opponent, day),
    received,
    {
      played,
      notes: [...notes, `${opponent.name} is taken to play the plan for the fewest strokes${others}.`],
    },
    stakes,
    aim,
  )
}

/** The holes after the one that is planned, to the last that counts, from the same markers. Throws MAR-USAGE-002. */
function holesAfter({ course, hole, day }: ObjectiveSetting, through: string): Hole[] {
  const refs = course.holes.map(({ ref }) => ref)
  const [from, to] = [refs.indexOf(hole.ref), refs.indexOf(through)]
  if (to < from)
    throw new Failure('MAR-USAGE-002', `There is no hole ${through} after hole ${hole.ref}.`, '--through')
  return refs.slice(from + 1, to + 1).map((ref) => {
    const later = holeFromCourse(course, ref, { tee: hole.teeName === '' ? undefined : hole.teeName, day })
    if (later.green === null)
      throw new Failure(
        'MAR-PLAN-001',
        `Hole ${ref} cannot be counted: the survey has no green for it. Draw or type the green first.`,
        `hole ${ref}`,
      )
    return later
  })
}

function handicapOf({ course, hole }: ObjectiveSetting, player: Player, allowance: number): number | null {
  return handicapOn(course.teeSets, hole.teeName, player, allowance)
}

/**
 * Handicap strokes on the hole as given, else those of the player less those of the opponent by its stroke index, else
 * none; and what to say of it. `handicaps`: whole strokes of both, `null` where the card does not tell.
 */
function counted(
  given: number | undefined,
  { strokeIndex }: Hole,
  handicaps: readonly [own: number, theirs: number] | null,
): { readonly received: number; readonly notes: readonly string[] } {
  if (given !== undefined) return { received: given, notes: [] }
  if (handicaps === null || strokeIndex === null)
    return {
      received: 0,
      notes: ['No handicap strokes are counted: the card lacks ratings of these tees or the stroke index.'],
    }
  const [own, theirs] = handicaps
  const received = strokesReceived(own, strokeIndex) - strokesReceived(theirs, strokeIndex)
  return {
    received,
    notes: [`Handicap strokes on this hole by the card, stroke index ${strokeIndex}: ${received}.`],
  }
}
