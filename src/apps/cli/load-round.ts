import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Player } from '#golf/player/player.ts'
import { parseLog, type ReadRound } from '#golf/round/parse-log.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import type { PlanNumbers } from '#golf/round/plan-numbers.ts'
import {
  isCalled,
  isPlayedOn,
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
  if (taken === null) return read
  const { planNumbers, faults } = ofTheirs(read.planNumbers, taken.players)
  return { ...read, planNumbers, faults: [...whose(belongs, taken, path), ...faults, ...read.faults] }
}

/** Plan numbers of nobody it is taken for are told and left out. */
function ofTheirs(
  planNumbers: PlanNumbers | null,
  players: readonly Player[],
): Pick<ReadRound, 'planNumbers' | 'faults'> {
  const isTheirs =
    players.length === 0 || players.some((one) => isCalled(planNumbers?.player.name ?? '', one))
  if (planNumbers === null || isTheirs) return { planNumbers, faults: [] }
  const message = `The plan numbers of the round are of ${planNumbers.player.name}, who is not among the players that are given: they were left out.`
  return {
    planNumbers: null,
    faults: [
      {
        severity: 'warning',
        code: 'MAR-ROUND-015',
        message,
        place: 'plan_numbers',
        advice: 'Give the file of the player who played it.',
      },
    ],
  }
}

function whose({ course, player }: RoundBelongs, taken: TakenFor, path: string): Fault[] {
  if (!isPlayedOn(course, taken.course))
    throw new Failure(
      'MAR-ROUND-015',
      `The round was played on ${course}, the course file is of ${taken.course}.`,
      `${path}: course`,
    )
  const isTheirs =
    player === null || taken.players.length === 0 || taken.players.some((one) => isCalled(player, one))
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
