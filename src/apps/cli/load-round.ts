import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { pageName } from '#golf/player/first-name.ts'
import type { Player } from '#golf/player/player.ts'
import { parseLog, type ReadRound } from '#golf/round/parse-log.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import {
  isPlayedOn,
  isSameName,
  type RoundBelongs,
  roundBelongs,
  STILL_OPEN,
} from '#golf/round/round-belongs.ts'
import { readText } from './read-file.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** Whose round it is taken for, and on which course. */
interface TakenFor {
  readonly course: string
  /** None: whoever it names. */
  readonly players: readonly Player[]
}

/**
 * A round from a `round/1` file or a typed paper log, told apart by the first brace. Throws when there is no round in it,
 * MAR-ROUND-014 for one that counts and is not closed, and with `taken` MAR-ROUND-015 for one of another course; that it names
 * another player is a warning among its faults.
 */
export function loadRound(path: string, units: ReaderUnits, taken: TakenFor | null = null): ReadRound {
  const text = readText(path)
  if (!/^\uFEFF?\s*[{[]/.test(text)) return parseLog(text, path, units)
  const read = parseRound(text, path)
  const belongs = roundBelongs(text, path)
  if (belongs.isOpen)
    throw new Failure('MAR-ROUND-014', `${STILL_OPEN} Close it where it is written down.`, path)
  return taken === null ? read : { ...read, faults: [...whose(belongs, taken, path), ...read.faults] }
}

function whose({ course, player }: RoundBelongs, taken: TakenFor, path: string): Fault[] {
  if (!isPlayedOn(course, taken.course))
    throw new Failure(
      'MAR-ROUND-015',
      `The round was played on ${course}, the course file is of ${taken.course}.`,
      `${path}: course`,
    )
  const isTheirs =
    player === null ||
    taken.players.length === 0 ||
    taken.players.some(({ name, age }) => isSameName(player, name) || isSameName(player, pageName(name, age)))
  if (isTheirs) return []
  return [
    {
      severity: 'warning',
      code: 'MAR-ROUND-015',
      message: `The round names ${player} as its player, and is taken for one of ${taken.players.map(({ name }) => name).join(', ')}.`,
      place: 'player',
      advice: 'Give the file of the player who played it, or mend the name in the round.',
    },
  ]
}
