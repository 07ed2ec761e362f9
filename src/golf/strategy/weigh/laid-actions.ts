import type { Lie } from '#golf/player/player.ts'
import type { KernelMemory } from '#numbers/kernels/kernel-memory.ts'
import { BLOCK, GROUP, LANDING, SEGMENT } from '#numbers/kernels/weigh-layout.ts'
import { actionOf } from '../actions.ts'
import type { HoleModel } from '../hole-model.ts'
import type { LineGroup } from '../line-groups.ts'
import { fineOffsets } from '../places.ts'
import type { RestTable } from '../rest-table.ts'
import type { ShotTable } from '../shot-table.ts'
import { isAllowed, type Shot } from '../shots.ts'
import { type LaidTables, turnedCell } from './laid-tables.ts'
import type { NearBox } from './near-box.ts'
import { playableCells } from './playable-cells.ts'

/** One action as the kernel reads it: addresses of its groups of strikes and of the cells that it is played from. */
export interface LaidAction {
  /** Number of its shot. */
  readonly shot: number
  readonly action: number
  readonly groups: number
  readonly groupCount: number
  readonly segments: number
  readonly segmentCount: number
  /** What it cost when last weighed, by block of cells. */
  readonly memo: number
  /** Numbers of the landings and addresses of the slants that it reads. */
  readonly landings: readonly number[]
  readonly rises: readonly number[]
}

/** A run of strikes that weigh the same and leave on one slant. */
interface StrikeGroup {
  readonly weight: number
  readonly slant: number
  readonly strikes: number[]
}

/**
 * Lays every action of a hole in the kernel's memory, whose rows are the hole's columns. Line by line, since lines beside
 * each other read the same landings.
 */
export function laidActions(
  model: HoleModel,
  memory: KernelMemory,
  laid: LaidTables,
  near: NearBox,
  question: {
    readonly shots: readonly Shot[]
    readonly groups: readonly LineGroup[]
    readonly reach: Float64Array
    readonly tableOf: (shot: number, lie: Lie, line: number) => ShotTable
  },
): LaidAction[] {
  // As the kernel has them.
  const [columns, rows] = [model.places.coarse.rows, model.places.coarse.columns]
  const { finePerCoarse } = model.places
  const { toCellX, toCellY } = fineOffsets(model.places)
  const actions: LaidAction[] = []
  for (const group of question.groups)
    for (const [index, shot] of question.shots.entries()) {
      if (!isAllowed(shot, group.lie, model.player)) continue
      const cells = playableCells(model, shot, group, question.reach)
      if (cells.length === 0) continue
      const turned = Int32Array.from(cells, (cell) => turnedCell(model.places, cell)).sort()
      actions.push(layAction(index, group, turned))
    }
  return actions

  function layAction(index: number, { lie, line }: LineGroup, cells: Int32Array): LaidAction {
    const table = question.tableOf(index, lie, line)
    const first = Math.floor((cells[0] as number) / columns)
    const last = Math.floor((cells[cells.length - 1] as number) / columns)
    const landings = new Set<number>()
    const groups = new Map<string, StrikeGroup>()
    for (let k = 0; k < table.weight.length; k++) {
      const weight = table.weight[k] as number
      const [byRows, byColumns] = [table.cellDx[k] as number, table.cellDy[k] as number]
      const landing = laid.landing(table.rest[k] as RestTable, table.down[k] ?? null)
      const green = laid.green(table.restOnGreen[k] as RestTable)
      widenRows(landing, held(first + byRows, rows), held(last + byRows, rows) + 1)
      landings.add(landing)
      const slant = laid.rise(table.up[k] ?? null)
      const key = `${weight} ${slant}`
      const group = groups.get(key) ?? { weight, slant, strikes: [] }
      groups.set(key, group)
      const phaseX = (table.fineDx[k] as number) + toCellX - finePerCoarse * byRows
      const phaseY = (table.fineDy[k] as number) + toCellY - finePerCoarse * byColumns
      group.strikes.push(
        laid.landings[landing] as number,
        byRows,
        byColumns,
        phaseX * finePerCoarse + phaseY,
        green,
      )
    }
    const segments = segmentsOf(cells)
    let blocks = 0
    for (let at = 0; at < segments.length; at += SEGMENT.words)
      blocks += Math.ceil(
        ((segments[at + SEGMENT.until] as number) - (segments[at + SEGMENT.from] as number)) / BLOCK,
      )
    const memo = memory.allocate(4 * BLOCK * blocks)
    memory.figures().fill(NEVER_WEIGHED, memo / 4, memo / 4 + BLOCK * blocks)
    return {
      shot: index,
      action: actionOf(index, lie, line),
      groups: placeGroups([...groups.values()]),
      groupCount: groups.size,
      segments: memory.place(Int32Array.from(segments)),
      segmentCount: segments.length / SEGMENT.words,
      memo,
      landings: [...landings],
      rises: [...new Set([...groups.values()].map(({ slant }) => slant))].filter((slant) => slant !== 0),
    }
  }

  function placeGroups(groups: readonly StrikeGroup[]): number {
    const strikes = memory.place(Int32Array.from(groups.flatMap((group) => group.strikes)))
    const address = memory.allocate(4 * GROUP.words * groups.length)
    let next = strikes
    for (const [number, { weight, slant, strikes: own }] of groups.entries()) {
      const at = address / 4 + number * GROUP.words
      memory.words()[at + GROUP.first] = next
      next += 4 * own.length
      memory.words()[at + GROUP.last] = next
      memory.figures()[at + GROUP.weight] = weight
      memory.words()[at + GROUP.slant] = slant
    }
    return address
  }

  /** A landing is laid over the rows in which some ball of some action lands. */
  function widenRows(landing: number, from: number, to: number): void {
    const words = memory.words()
    const at = (laid.landings[landing] as number) / 4
    words[at + LANDING.rowFrom] = Math.min(words[at + LANDING.rowFrom] as number, from)
    words[at + LANDING.rowTo] = Math.max(words[at + LANDING.rowTo] as number, to)
    const isNear =
      (words[at + LANDING.rowTo] as number) > near.row &&
      (words[at + LANDING.rowFrom] as number) < near.row + near.rows
    words[at + LANDING.hasNear] = isNear ? 1 : 0
  }

  /** Neighbouring cells of a row as one segment: row, from, until. */
  function segmentsOf(cells: Int32Array): number[] {
    const segments: number[] = []
    let next = -1
    for (const cell of cells) {
      if (cell === next && cell % columns !== 0)
        segments[segments.length - 1] = (segments[segments.length - 1] as number) + 1
      else segments.push(Math.floor(cell / columns), cell % columns, (cell % columns) + 1)
      next = cell + 1
    }
    return segments
  }
}

/** Stands for the cost of what was never weighed: it may be the cheapest. */
const NEVER_WEIGHED = -3e38

function held(index: number, size: number): number {
  return Math.min(size - 1, Math.max(0, index))
}
