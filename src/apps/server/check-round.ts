import { nameOfRound } from '#golf/round/kept-round.ts'
import { parseKeptRound } from '#golf/round/parse-kept-round.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import { roundBelongs } from '#golf/round/round-belongs.ts'
import type { CheckedDocument } from './document-check.ts'

/**
 * Reads a document as a round: with its log, begun or not, or as a person writes it. Its faults keep nothing from being
 * kept: what was played cannot be played again. Throws the Failure of the reader when it is none.
 */
export function checkRound(text: string, where: string): CheckedDocument {
  const kept = parseKeptRound(text, where)
  const { faults, facts } =
    kept === null ? typed(text, where) : { faults: kept.faults, facts: kept.round.facts }
  return { name: nameOfRound(facts), faults: faults.map((fault) => ({ ...fault, severity: 'warning' })) }
}

function typed(text: string, where: string) {
  return { faults: parseRound(text, where).faults, facts: roundBelongs(text, where) }
}
