import type { RoundHole } from './round.ts'
import type { LoggedStroke, LogWord, RoundLog } from './round-log.ts'

/** A stroke of the log under its id. */
export interface KeptStroke {
  readonly id: string
  readonly stroke: LoggedStroke
  /** How late it was said: of two strokes under one number the later one counts. */
  readonly count: number
  readonly by: string
}

/** A hole as the log has it. */
export interface HoleOfLog {
  readonly ref: string
  /** In the order they were played; these count. */
  readonly strokes: readonly KeptStroke[]
  /** Written down on another phone under a number that has a stroke here: kept, not counted, until a person decides. */
  readonly setAside: readonly KeptStroke[]
  /** `null` = not said. */
  readonly putts: number | null
  readonly firstPuttMetres: number | null
  readonly isPickedUp: boolean
  readonly isSkipped: boolean
}

/** Every stroke of a hole that was not taken back, in order; two that share a number one after the other. */
export function strokesOn(log: RoundLog, hole: string): readonly KeptStroke[] {
  const found: KeptStroke[] = []
  for (const { word, count, by } of log.values())
    if (word.kind === 'stroke' && word.stroke?.hole === hole)
      found.push({ id: word.id, stroke: word.stroke, count, by })
  return found.sort((a, b) => a.stroke.order - b.stroke.order || (a.id < b.id ? -1 : 1))
}

/** What the log says of one hole. */
export function holeOfLog(log: RoundLog, ref: string): HoleOfLog {
  const strokes: KeptStroke[] = []
  const setAside: KeptStroke[] = []
  for (const one of strokesOn(log, ref)) {
    const last = strokes.at(-1)
    if (last === undefined || last.stroke.order !== one.stroke.order) strokes.push(one)
    else if (isLaterSaid(one, last)) {
      strokes[strokes.length - 1] = one
      setAside.push(last)
    } else setAside.push(one)
  }
  return {
    ref,
    strokes,
    setAside,
    putts: saidOf(log, 'putts', ref)?.putts ?? null,
    firstPuttMetres: saidOf(log, 'first putt', ref)?.metres ?? null,
    isPickedUp: saidOf(log, 'picked up', ref)?.isSo === true,
    isSkipped: saidOf(log, 'skipped', ref)?.isSo === true,
  }
}

type HoleWord = Extract<LogWord, { readonly hole: string }>

function saidOf<Kind extends HoleWord['kind']>(
  log: RoundLog,
  kind: Kind,
  ref: string,
): Extract<HoleWord, { readonly kind: Kind }> | null {
  const word = log.get(`${kind} ${ref}`)?.word
  return (word as Extract<HoleWord, { readonly kind: Kind }> | undefined) ?? null
}

/** Whether the round was closed. */
export function isClosed(log: RoundLog): boolean {
  return log.has('closed')
}

/** The holes that something was written down of, those of `refs` first and in their order. A skipped hole without strokes is none. */
export function holesOfLog(log: RoundLog, refs: readonly string[]): readonly RoundHole[] {
  const said = [...log.values()].flatMap(({ word }) =>
    word.kind === 'stroke' ? (word.stroke?.hole ?? []) : 'hole' in word ? word.hole : [],
  )
  return [...new Set([...refs, ...said.sort()])].flatMap((ref, index): RoundHole[] => {
    const hole = holeOfLog(log, ref)
    const { strokes, putts, isPickedUp, isSkipped, firstPuttMetres } = hole
    if (strokes.length === 0 && (isSkipped || (!isPickedUp && (putts ?? 0) === 0))) return []
    return [
      {
        ref,
        strokes: strokes.map(({ stroke: { club, finish, penalty, isAsPlanned } }, count) => ({
          club,
          finish,
          penalty,
          isAsPlanned,
          aimOffsetMetres: null,
          from: null,
          lie: null,
          place: `hole ${ref}, stroke ${count + 1}`,
        })),
        putts: putts ?? 0,
        firstPuttMetres,
        isPickedUp,
        place: `holes[${index}]`,
      },
    ]
  })
}

function isLaterSaid(one: KeptStroke, other: KeptStroke): boolean {
  if (one.count !== other.count) return one.count > other.count
  return one.by === other.by ? one.id > other.id : one.by > other.by
}
