import type { Lie } from '#golf/player/player.ts'
import { kernelMemory } from '#numbers/kernels/kernel-memory.ts'
import type { KernelFor } from '#numbers/kernels/weigh-kernel.ts'
import { BLOCK, FRAME, NEVER_DEARER, PLAIN } from '#numbers/kernels/weigh-layout.ts'
import type { HoleModel } from '../hole-model.ts'
import type { LineGroup } from '../line-groups.ts'
import { OUTCOME_KINDS } from '../outcome.ts'
import { KEPT_ACTIONS } from '../settings.ts'
import type { ShotTable } from '../shot-table.ts'
import type { Shot } from '../shots.ts'
import { laidActions } from './laid-actions.ts'
import { laidTables, turnedCell } from './laid-tables.ts'
import { inLayingOrder, landingBuffers } from './landing-buffers.ts'
import { nearBox } from './near-box.ts'

/** All actions of a hole, laid out to be weighed together with the present values. */
export interface WeighedHole {
  /**
   * Weighs the actions of every state, but those that cannot be among the cheapest any more: each has cost so much more
   * when last weighed that no fall of any value since could make up for it. Writes the cheapest few of each, cheapest first: costs in single precision, and
   * numbers of actions, −1 where there are no more; by cell, `KEPT_ACTIONS` each.
   */
  weighInto(values: Float64Array, costs: Float32Array, actions: Int32Array): void
  readonly actionCount: number
  /** (State, action) pairs that one weighing looks at, each with every strike. */
  readonly pairCount: number
  readonly bytes: number
}

/** Bytes for laid landings: enough for those of neighbouring lines, so that most are laid once in a weighing. */
const BUFFER_BYTES = 48e6
/** What it takes to lay a fine cell out, against looking one up: then a quarter of the strikes land near the pin. Measured. */
const LAYING_SHARE = 0.5
const NEAR_SHARE = 0.25

/** Lays out a hole's actions. The kernel is given the memory that they lie in. */
export function weighedHole(
  model: HoleModel,
  question: {
    readonly shots: readonly Shot[]
    readonly groups: readonly LineGroup[]
    readonly reach: Float64Array
    readonly tableOf: (shot: number, lie: Lie, line: number) => ShotTable
    readonly strikeCount: number
    readonly kernelFor: KernelFor
    /** How much dearer than the value of its state an action is still weighed, strokes. */
    readonly keptWithin: number
  },
): WeighedHole {
  const { places, costs, states } = model
  // The kernel's rows are the hole's columns.
  const [columns, rows] = [places.coarse.rows, places.coarse.columns]
  const memory = kernelMemory()
  const near = nearBox(places)
  const outcomes = places.count * OUTCOME_KINDS
  const stateStride = columns + BLOCK
  const frame = memory.allocate(4 * FRAME.words)
  const set = (field: number, word: number): number => {
    memory.words()[frame / 4 + field] = word
    return word
  }
  set(FRAME.columns, columns)
  set(FRAME.rows, rows)
  set(FRAME.nearColumn, near.column)
  set(FRAME.nearRow, near.row)
  set(FRAME.nearColumns, near.columns)
  set(FRAME.nearRows, near.rows)
  set(FRAME.phases, places.finePerCoarse ** 2)
  set(FRAME.nearPlaces, memory.place(near.places))
  set(
    FRAME.isNear,
    memory.place(
      Uint8Array.from({ length: places.coarseCount }, (_, cell) => {
        const column = Math.floor(cell / columns)
        return places.isNearPin[(cell - column * columns) * rows + column] as number
      }),
    ),
  )
  const floats = (field: number, count: number): number => set(field, memory.allocate(4 * count))
  const cost = floats(FRAME.cost, outcomes)
  const back = floats(FRAME.back, outcomes)
  const kept = floats(FRAME.kept, outcomes)
  const relief = floats(FRAME.relief, outcomes)
  floats(FRAME.relieved, outcomes)
  floats(FRAME.returned, outcomes)
  const here = floats(FRAME.here, rows * stateStride + BLOCK)
  const worst = floats(FRAME.worst, rows * stateStride + BLOCK)
  const keptCosts = floats(FRAME.keptCosts, places.coarseCount * KEPT_ACTIONS)
  const keptActions = floats(FRAME.keptActions, places.coarseCount * KEPT_ACTIONS)
  set(FRAME.keptCount, KEPT_ACTIONS)
  memory.figures().fill(PLAIN, relief / 4, relief / 4 + outcomes)
  const laid = laidTables(memory, places, costs)
  const actions = laidActions(model, memory, laid, near, question)
  laid.fill(model.lookUp)
  for (const outcome of laid.specials) {
    memory.figures()[word(FRAME.relieved) / 4 + outcome] = costs.relieved[outcome] as number
    memory.figures()[word(FRAME.returned) / 4 + outcome] = costs.returned[outcome] as number
  }
  memory.figures()[frame / 4 + FRAME.margin] = question.keptWithin
  let fallen = 0
  let weighedFrom: Float64Array | null = null
  const kernel = question.kernelFor(memory, frame)
  const pairCount = actions.reduce((sum, one) => sum + cellsOf(one.segments, one.segmentCount), 0)
  const padded = columns + 2 * BLOCK
  const nearPadded = near.columns + 2 * BLOCK
  const nearFloats = near.rows * places.finePerCoarse ** 2 * nearPadded
  const isLaidNear =
    LAYING_SHARE * laid.landings.length * nearFloats < NEAR_SHARE * pairCount * question.strikeCount
  set(FRAME.hasPlanes, isLaidNear ? 1 : 0)
  const laidFloats =
    rows * (3 * padded + Math.ceil(padded / BLOCK)) +
    3 * nearFloats +
    near.rows * Math.ceil(nearPadded / BLOCK)
  const mostLandings = actions.reduce((most, { landings }) => Math.max(most, landings.length), 0)
  // Where balls of a landing rest lies behind what landing costs.
  const bufferFloats = laidFloats + places.count
  const bufferCount = Math.min(
    laid.landings.length,
    Math.max(2 * mostLandings, Math.round(BUFFER_BYTES / (4 * bufferFloats))),
  )
  const buffers = Array.from({ length: bufferCount }, () => memory.allocate(4 * bufferFloats))
  const ordered = inLayingOrder(actions, bufferCount, laid.landings.length)
  const turned = Int32Array.from(states.order, (state) => turnedCell(places, state))

  function word(field: number): number {
    return memory.words()[frame / 4 + field] as number
  }

  /** Writes what every outcome costs for these values. */
  function setCosts(values: Float64Array): void {
    const figures = memory.figures()
    for (let place = 0; place < places.count; place++) figures[cost / 4 + place] = values[place] as number
    for (const outcome of laid.specials) {
      if (costs.isKnown[outcome] === 0) costs.workOut(outcome, values)
      const dropped = costs.relief[outcome] as number
      const hasRelief = dropped < Number.POSITIVE_INFINITY
      const share = costs.relieved[outcome] as number
      const played = (costs.kept[outcome] as number) - (costs.reliefInKept[outcome] as number)
      figures[cost / 4 + outcome] = costs.kept[outcome] as number
      figures[kept / 4 + outcome] = played
      figures[back / 4 + outcome] = (costs.returned[outcome] as number) + (hasRelief ? 0 : share)
      figures[relief / 4 + outcome] = share > 0 && hasRelief ? dropped : NEVER_DEARER
    }
    for (const [index, cell] of turned.entries())
      figures[here / 4 + cell + Math.floor(cell / columns) * BLOCK] = values[
        states.order[index] as number
      ] as number
  }

  /** Adds how far the value that fell most has fallen since the last weighing. */
  function setFallen(values: Float64Array): void {
    let fall = 0
    if (weighedFrom !== null)
      for (let place = 0; place < values.length; place++) {
        const fell = (weighedFrom[place] as number) - (values[place] as number)
        // Not `Math.max`: a place from which no stroke ever ends stays infinite, and its fall is not a number.
        if (fell > fall) fall = fell
      }
    fallen += fall
    weighedFrom = values.slice()
    memory.figures()[frame / 4 + FRAME.fallen] = fallen
  }

  /** Lays landings as actions come to read them. */
  function weighAll(): void {
    const laying = landingBuffers(bufferCount, laid.landings.length)
    for (const one of ordered) {
      model.lookUp()
      if (!kernel.hasLive(one.segments, one.segmentCount, one.memo)) continue
      laying.read(one, (landing, number) => {
        const buffer = buffers[number] as number
        laid.layRests(landing, buffer + 4 * laidFloats)
        kernel.layLanding(laid.landings[landing] as number, buffer)
      })
      kernel.weighAction(one.action, one.groups, one.groupCount, one.segments, one.segmentCount, one.memo)
    }
  }

  return {
    actionCount: actions.length,
    pairCount,
    bytes: memory.memory.buffer.byteLength,
    weighInto(values, bestCosts, bestActions) {
      setCosts(values)
      setFallen(values)
      const slots = places.coarseCount * KEPT_ACTIONS
      memory.figures().fill(Number.MAX_VALUE, worst / 4, worst / 4 + rows * stateStride + BLOCK)
      memory.figures().fill(Number.POSITIVE_INFINITY, keptCosts / 4, keptCosts / 4 + slots)
      memory.words().fill(-1, keptActions / 4, keptActions / 4 + slots)
      for (const slant of new Set(actions.flatMap(({ rises }) => rises))) kernel.layRise(slant)
      weighAll()
      const [costsLaid, actionsLaid] = [memory.figures(), memory.words()]
      for (const [index, cell] of turned.entries()) {
        const to = (states.order[index] as number) * KEPT_ACTIONS
        const from = cell * KEPT_ACTIONS
        for (let slot = 0; slot < KEPT_ACTIONS; slot++) {
          bestCosts[to + slot] = costsLaid[keptCosts / 4 + from + slot] as number
          bestActions[to + slot] = actionsLaid[keptActions / 4 + from + slot] as number
        }
      }
    },
  }

  function cellsOf(segments: number, count: number): number {
    let cells = 0
    for (let segment = 0; segment < count; segment++) {
      const at = segments / 4 + 3 * segment
      cells += (memory.words()[at + 2] as number) - (memory.words()[at + 1] as number)
    }
    return cells
  }
}
