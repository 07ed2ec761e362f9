import { type LoggedStroke, type LogWord, nextCount, type RoundLog, thingOf } from './round-log.ts'
import { strokesOn } from './round-of-log.ts'

/** What a person does to a log: the words that say it, later than everything known. */
export type LogStep = (log: RoundLog, by: string) => readonly LogWord[]

/** What is said of a stroke before it has its place. */
export type TappedStroke = Pick<LoggedStroke, 'club' | 'finish' | 'penalty' | 'isAsPlanned'>

/** A stroke after all others of the hole. */
export function addStroke(hole: string, tapped: TappedStroke): LogStep {
  return (log, by) => {
    const last = strokesOn(log, hole).at(-1)
    const stroke = { hole, order: Math.floor(last?.stroke.order ?? 0) + 1, ...tapped }
    return [{ kind: 'stroke', id: `${by}-${nextCount(log)}`, stroke }]
  }
}

/** A stroke that was forgotten, before another one. */
export function insertStroke(beforeId: string, tapped: TappedStroke): LogStep {
  return (log, by) => {
    const next = strokeIn(log, beforeId)
    if (next === null) return []
    const orders = strokesOn(log, next.hole).map(({ stroke }) => stroke.order)
    const earlier = orders.filter((order) => order < next.order).at(-1) ?? 0
    const stroke = { hole: next.hole, order: (earlier + next.order) / 2, ...tapped }
    return [{ kind: 'stroke', id: `${by}-${nextCount(log)}`, stroke }]
  }
}

/** A stroke said otherwise. */
export function changeStroke(id: string, change: Partial<TappedStroke>): LogStep {
  return (log) => {
    const known = strokeIn(log, id)
    return known === null ? [] : [{ kind: 'stroke', id, stroke: { ...known, ...change } }]
  }
}

/** A stroke that was never played. */
export function removeStroke(id: string): LogStep {
  return (log) => (strokeIn(log, id) === null ? [] : [{ kind: 'stroke', id, stroke: null }])
}

/** Of strokes that two phones wrote down under one number, those of one phone were played after all others of the hole. */
export function playAfter(ids: readonly string[]): LogStep {
  return (log) => {
    const moved = ids.flatMap((id) => {
      const stroke = strokeIn(log, id)
      return stroke === null ? [] : [{ id, stroke }]
    })
    const [first] = moved
    if (first === undefined) return []
    const others = strokesOn(log, first.stroke.hole).filter(({ id }) => !ids.includes(id))
    const last = Math.floor(others.at(-1)?.stroke.order ?? 0)
    return moved
      .toSorted((a, b) => a.stroke.order - b.stroke.order)
      .map(({ id, stroke }, index) => ({
        kind: 'stroke',
        id,
        stroke: { ...stroke, order: last + 1 + index },
      }))
  }
}

/** One word on a hole or on the round. */
export function say(...words: readonly LogWord[]): LogStep {
  return () => words
}

/** The words that take a step back: what was said of each thing before it. A closed round stays closed. */
export function wordsBefore(log: RoundLog, words: readonly LogWord[]): readonly LogWord[] {
  return words
    .map((word) => log.get(thingOf(word))?.word ?? unsaid(word))
    .filter((word): word is LogWord => word !== null)
}

/** The word that makes as if nothing had been said; `null` where there is none. */
function unsaid(word: LogWord): LogWord | null {
  switch (word.kind) {
    case 'stroke':
      return { ...word, stroke: null }
    case 'putts':
      return { ...word, putts: null }
    case 'first putt':
      return { ...word, metres: null }
    case 'picked up':
    case 'skipped':
      return { ...word, isSo: false }
    case 'closed':
      return null
  }
}

function strokeIn(log: RoundLog, id: string): LoggedStroke | null {
  const word = log.get(`stroke ${id}`)?.word
  return word?.kind === 'stroke' ? word.stroke : null
}
