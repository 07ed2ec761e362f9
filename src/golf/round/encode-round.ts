import type { KeptRound, RoundFacts } from './kept-round.ts'
import type { Finish, RoundHole } from './round.ts'
import type { LogEntry, LogWord } from './round-log.ts'
import { holesOfLog, isClosed } from './round-of-log.ts'

/** A round as a `round/1` file: its holes for every reader, and the log from which other copies of it are merged. */
export function encodeRound({ facts, log }: KeptRound): string {
  const holes = holesOfLog(
    log,
    facts.card.map(({ ref }) => ref),
  )
  const entries = [...log.entries()].sort(([one], [other]) => (one < other ? -1 : 1))
  return `${JSON.stringify({
    schema: 'round/1',
    ...factsOf(facts),
    closed: isClosed(log),
    holes: holes.map(holeOf),
    log: entries.map(([, entry]) => entryOf(entry)),
  })}\n`
}

function factsOf(facts: RoundFacts) {
  const { courseId, playerId, hasDevices, isTextOnly, clubs, card, planNumbers, ...same } = facts
  return {
    ...same,
    course_id: courseId,
    player_id: playerId,
    devices: hasDevices,
    text_only: isTextOnly,
    clubs,
    // What is empty is not there: a text of no letters is a fault to every reader.
    card: card.map(({ ref, par, facts: words, ...texts }) => ({
      ref,
      par,
      facts: words,
      ...Object.fromEntries(Object.entries(texts).filter(([, text]) => text !== '')),
    })),
    ...(planNumbers === null ? {} : { plan_numbers: planNumbers }),
  }
}

function holeOf({ ref, strokes, putts, firstPuttMetres, isPickedUp }: RoundHole) {
  return {
    ref,
    strokes: strokes.map(({ club, finish, penalty, isAsPlanned }) => ({
      ...(club === null ? {} : { club }),
      ...(finish === null ? {} : { to: finishOf(finish) }),
      ...(penalty === null ? {} : { penalty }),
      ...(isAsPlanned ? { asPlanned: true } : {}),
    })),
    putts,
    ...(firstPuttMetres === null ? {} : { firstPutt_m: firstPuttMetres }),
    ...(isPickedUp ? { pickedUp: true } : {}),
  }
}

function finishOf(finish: Finish) {
  if (!('letter' in finish)) return { x_m: finish.x, y_m: finish.y }
  const { letter, leftMetres } = finish
  return leftMetres === null ? { letter } : { letter, left_m: leftMetres }
}

function entryOf({ word, count, by }: LogEntry) {
  return { ...wordOf(word), count, by }
}

function wordOf(word: LogWord) {
  switch (word.kind) {
    case 'stroke': {
      const { id, stroke } = word
      if (stroke === null) return { stroke: id, gone: true }
      const { hole, order, club, finish, penalty, isAsPlanned } = stroke
      const to = finish === null ? null : finishOf(finish)
      return { stroke: id, hole, order, club, to, penalty, asPlanned: isAsPlanned }
    }
    case 'putts':
      return { hole: word.hole, putts: word.putts }
    case 'first putt':
      return { hole: word.hole, firstPutt_m: word.metres }
    case 'picked up':
      return { hole: word.hole, pickedUp: word.isSo }
    case 'skipped':
      return { hole: word.hole, skipped: word.isSo }
    case 'closed':
      return { closed: true }
  }
}
