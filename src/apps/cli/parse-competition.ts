import { Failure } from '#faults/failure.ts'
import { COUNTINGS, type Competition, PLAYS } from '#golf/round/competition.ts'
import type { HoleLimit } from '#golf/rules/hole-limit.ts'
import { parseCount, parseWord } from './parse-values.ts'

/** How a competition is played and counted, as typed. */
export interface CompetitionOptions {
  readonly play: string
  readonly by: string
  readonly maximum?: string
  readonly allowance?: string
  readonly gross?: boolean
}

const MOST_ALLOWANCE = 100
const MOST_LIMIT = 20

/** Reads what is played and what counts. Throws MAR-USAGE-002. */
export function parseCompetition(options: CompetitionOptions): Competition {
  const play = parseWord(options.play, PLAYS, '--play')
  const by = parseWord(options.by, COUNTINGS, '--by')
  if (options.maximum !== undefined && by !== 'maximum')
    throw refused('A hole has a maximum only in maximum score: give --by maximum.', '--maximum')
  if (options.allowance !== undefined && options.gross === true)
    throw refused('Without handicaps there is no allowance: give --allowance or --gross.', '--allowance')
  if (options.allowance !== undefined && play !== 'singles' && play !== 'four-ball')
    throw refused(
      `What partners give to one ball in ${play} is published part by part and has no single allowance.`,
      '--allowance',
    )
  return {
    play,
    by,
    limit: parseLimit(options.maximum ?? 'net-double-bogey'),
    allowance:
      options.allowance === undefined
        ? null
        : parseCount(options.allowance, '--allowance', 0, MOST_ALLOWANCE),
    isGross: options.gross === true,
  }
}

/** `net-double-bogey`, `double-par`, `par+4` or a number of strokes. */
function parseLimit(text: string): HoleLimit {
  if (text === 'net-double-bogey' || text === 'double-par') return { kind: text }
  const [, overPar, strokes] = /^(par\+)?(\d+)$/.exec(text) ?? []
  if (strokes === undefined)
    throw refused(
      `"${text}" is no maximum of a hole. Write net-double-bogey, double-par, par+4 or a number of strokes.`,
      '--maximum',
    )
  return {
    kind: overPar === undefined ? 'strokes' : 'over-par',
    strokes: parseCount(strokes, '--maximum', 1, MOST_LIMIT),
  }
}

function refused(message: string, option: string): Failure {
  return new Failure('MAR-USAGE-002', message, option)
}
