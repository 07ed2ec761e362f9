import { Failure } from '#faults/failure.ts'
import { parseRelativeWind } from '#golf/course/parse-relative-wind.ts'
import type { SeenLie } from '#golf/player/player.ts'
import type { Stance } from '#golf/player/stance.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { parseObjective, type TypedObjective } from './parse-objective.ts'
import { parseCount, parseLie, parsePin, parsePoint, parseStance } from './parse-values.ts'
import { parseWorkers } from './parse-workers.ts'
import type { PlanOptions } from './plan-options.ts'
import { MOST_DRAWS } from './settings.ts'

/** What is asked of a hole besides who plays it and on what day. */
export interface Question {
  readonly tee: string | undefined
  readonly pin: 'front' | 'middle' | 'back' | Point | undefined
  readonly from: Point | undefined
  readonly lie: SeenLie | undefined
  readonly stance: Stance | undefined
  readonly club: string | undefined
  readonly draws: number | undefined
  /** Coarse cells and few strikes, without draws: soon and rough. */
  readonly isQuick: boolean
  /** As typed, such as `into:7`: what it means depends on the hole. */
  readonly wind: string | undefined
  readonly flips: boolean
  /** Threads for more than one plan; 0 = none but this. */
  readonly workers: number
  /** `undefined` = the fewest strokes. */
  readonly objective: TypedObjective | undefined
}

/** The options of a plan as values. Throws MAR-USAGE-002 and MAR-DAY-006, before any file is read. */
export function parseQuestion(options: PlanOptions): Question {
  // What the wind means waits for the hole, but whether it is one need not: a round would fail hole by hole.
  if (options.wind !== undefined) parseRelativeWind(options.wind, 0)
  if (options.lie !== undefined && options.from === undefined)
    throw new Failure('MAR-USAGE-002', 'A lie needs its place: give --from as well.', '--lie')
  if (options.stance !== undefined && options.from === undefined)
    throw new Failure('MAR-USAGE-002', 'A stance needs its place: give --from as well.', '--stance')
  if (options.hole === 'all' && (options.from !== undefined || options.picture !== undefined))
    throw new Failure(
      'MAR-USAGE-002',
      'A ball and a picture are of one hole: give its number to --hole.',
      '--hole',
    )
  refuseTwoForms(options)
  const draws = options.draws === undefined ? undefined : parseCount(options.draws, '--draws', 0, MOST_DRAWS)
  if (options.quick && draws !== undefined && draws > 0)
    throw new Failure('MAR-USAGE-002', 'A quick plan has no draws: leave --draws or --quick out.', '--quick')
  return {
    tee: options.tee,
    pin: options.pin === undefined ? undefined : parsePin(options.pin),
    from: options.from === undefined ? undefined : parsePoint(options.from, '--from'),
    lie: options.lie === undefined ? undefined : parseLie(options.lie),
    stance: options.stance === undefined ? undefined : parseStance(options.stance),
    club: options.club === undefined ? undefined : parseClub(options.club),
    draws,
    isQuick: options.quick === true,
    wind: options.wind,
    objective: parseObjective(options),
    // The page of more than one plan has no room for them.
    flips:
      options.flips && ((options.hole !== 'all' && options.player.length === 1) || isForProgram(options)),
    workers: parseWorkers(options.workers),
  }
}

/** The club as player files write it, from the words that a plan prints: `Pitching wedge` → `pitching-wedge`. */
function parseClub(text: string): string {
  const club = text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-')
  if (club === '') throw new Failure('MAR-USAGE-002', 'The name of the club is blank.', '--club')
  return club
}

/** Throws MAR-USAGE-002 where two forms of the answer are asked for, or a form that this answer does not have. */
function refuseTwoForms({ json, jsonLines, picture, player }: PlanOptions): void {
  if (json && jsonLines)
    throw new Failure('MAR-USAGE-002', 'Ask for one document or for lines, not for both.', '--json-lines')
  if (picture !== undefined && (jsonLines || player.length > 1))
    throw new Failure('MAR-USAGE-002', 'A picture is of one hole and one player.', '--picture')
}

function isForProgram({ json, jsonLines }: PlanOptions): boolean {
  return json === true || jsonLines === true
}
