import { completePlayer } from './complete-player.ts'
import type { Player } from './player.ts'

/** The levels a player may be said to have, by the man's or woman's handicap index that stands for each. */
export const LEVELS = [
  { name: 'tour', handicapIndex: -5 },
  { name: 'scratch', handicapIndex: 0 },
  { name: '5', handicapIndex: 5 },
  { name: '10', handicapIndex: 10 },
  { name: '15', handicapIndex: 15 },
  { name: '20', handicapIndex: 20 },
  { name: '25', handicapIndex: 25 },
  { name: '30', handicapIndex: 30 },
  { name: '36', handicapIndex: 36 },
] as const

/** Name of a level: `scratch`, `15`. */
export type LevelName = (typeof LEVELS)[number]['name']

/**
 * The player one expects of a level when nothing else is known: every number is the prior's and marked as a guess.
 * Right-handed, sex unstated and grown up unless said otherwise.
 */
export function playerOfLevel(
  name: LevelName,
  who: Partial<Pick<Player, 'hand' | 'sex' | 'age'>> = {},
): Player {
  const level = LEVELS.find((one) => one.name === name)
  if (level === undefined) throw new RangeError(`no level ${name}`)
  return completePlayer({
    hand: 'right',
    sex: 'unstated',
    ...who,
    name: `level ${name}`,
    handicapIndex: level.handicapIndex,
    clubs: [],
    shortGame: {},
    putting: {},
  })
}
