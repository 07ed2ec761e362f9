import type { KernelMemory } from './kernel-memory.ts'
import type { WeighKernel } from './weigh-kernel.ts'
import { BLOCK, FRAME, GROUP, LANDING, PLAIN, SEGMENT, SLANT, STRIKE } from './weigh-layout.ts'

/**
 * The readable twin: every strike of every action is followed from every cell by itself. Sums are in double precision, so
 * that it also tells how near the fast one is.
 */
export function weighPlainly(memory: KernelMemory, frame: number): WeighKernel {
  const word = (address: number, index: number): number => memory.words()[address / 4 + index] as number
  const figure = (address: number, index: number): number => memory.figures()[address / 4 + index] as number
  const framed = (field: number): number => word(frame, field)

  /** Adds to a tally what an outcome costs a ball struck from where the value is `here`. */
  function addOutcome(tally: Tally, outcome: number, chance: number, here: number): void {
    if (chance === 0) return
    if (figure(framed(FRAME.relief), outcome) === PLAIN) {
      tally.sum += chance * figure(framed(FRAME.cost), outcome)
      return
    }
    const isDearerThanBack = figure(framed(FRAME.relief), outcome) > 1 + here
    tally.sum += chance * figure(framed(isDearerThanBack ? FRAME.kept : FRAME.cost), outcome)
    tally.back +=
      chance *
      (isDearerThanBack
        ? figure(framed(FRAME.returned), outcome) + figure(framed(FRAME.relieved), outcome)
        : figure(framed(FRAME.back), outcome))
  }

  /** Adds what a slant catches of balls that come by with a chance, and returns the chance that is left. */
  function addCaught(tally: Tally, slant: number, cell: number, chance: number, here: number): number {
    const slot = slant === 0 ? 0 : slotOf(slant, cell)
    if (slot === 0) return chance
    const last = word(word(slant, SLANT.first), slot)
    for (let at = word(word(slant, SLANT.first), slot - 1); at < last; at++)
      addOutcome(
        tally,
        word(word(slant, SLANT.outcome), at),
        chance * figure(word(slant, SLANT.chance), at),
        here,
      )
    return chance * figure(word(slant, SLANT.left), slot - 1)
  }

  function slotOf(slant: number, cell: number): number {
    const row = Math.floor(cell / framed(FRAME.columns))
    const column = cell - row * framed(FRAME.columns)
    const at = row * Math.ceil((framed(FRAME.columns) + BLOCK) / 32) + (column >> 5)
    const met = word(word(slant, SLANT.met), at)
    if (((met >>> (column & 31)) & 1) === 0) return 0
    let slot = word(word(slant, SLANT.before), at) + 1
    for (let bit = 0; bit < (column & 31); bit++) slot += (met >>> bit) & 1
    return slot
  }

  function landedOutcome(strike: number, column: number, row: number): number {
    const nearColumn = column - framed(FRAME.nearColumn)
    const nearRow = row - framed(FRAME.nearRow)
    const [columns, rows] = [framed(FRAME.nearColumns), framed(FRAME.nearRows)]
    const isNear = nearColumn >= 0 && nearRow >= 0 && nearColumn < columns && nearRow < rows
    const place = isNear
      ? word(framed(FRAME.nearPlaces), (word(strike, STRIKE.phase) * rows + nearRow) * columns + nearColumn)
      : row * framed(FRAME.columns) + column
    return place < 0
      ? word(word(strike, STRIKE.green), -1 - place)
      : word(word(word(strike, STRIKE.landing), LANDING.rest), place)
  }

  function costFrom(groups: number, groupCount: number, column: number, row: number, here: number): number {
    const tally: Tally = { sum: 0, back: 0 }
    const cell = row * framed(FRAME.columns) + column
    for (let group = groups; group < groups + 4 * GROUP.words * groupCount; group += 4 * GROUP.words)
      for (
        let strike = word(group, GROUP.first);
        strike < word(group, GROUP.last);
        strike += 4 * STRIKE.words
      ) {
        const landing = word(strike, STRIKE.landing)
        const atColumn = held(column + word(strike, STRIKE.column), framed(FRAME.columns))
        const atRow = held(row + word(strike, STRIKE.row), framed(FRAME.rows))
        const landed = atRow * framed(FRAME.columns) + atColumn
        const flown = addCaught(tally, word(group, GROUP.slant), cell, figure(group, GROUP.weight), here)
        const left = addCaught(tally, word(landing, LANDING.slant), landed, flown, here)
        addOutcome(tally, landedOutcome(strike, atColumn, atRow), left, here)
      }
    return (1 + tally.sum + tally.back) / Math.max(1 - tally.back, LEAST_LEFT)
  }

  function keep(cell: number, action: number, cost: number): void {
    const slots = framed(FRAME.keptCount)
    const costs = framed(FRAME.keptCosts) / 4 + cell * slots
    const actions = framed(FRAME.keptActions) / 4 + cell * slots
    let slot = slots - 1
    if (!(cost < (memory.figures()[costs + slot] as number))) return
    for (; slot > 0 && (memory.figures()[costs + slot - 1] as number) > cost; slot--) {
      memory.figures()[costs + slot] = memory.figures()[costs + slot - 1] as number
      memory.words()[actions + slot] = memory.words()[actions + slot - 1] as number
    }
    memory.figures()[costs + slot] = cost
    memory.words()[actions + slot] = action
  }

  return {
    // It looks at every landing itself.
    layLanding() {},
    layRise() {},
    // It weighs everything anew.
    hasLive: () => true,
    weighAction(action, groups, groupCount, segments, segmentCount) {
      for (let segment = 0; segment < segmentCount; segment++) {
        const at = segments + 4 * SEGMENT.words * segment
        const row = word(at, SEGMENT.row)
        for (let column = word(at, SEGMENT.from); column < word(at, SEGMENT.until); column++) {
          const here = figure(framed(FRAME.here), row * (framed(FRAME.columns) + BLOCK) + column)
          const cost = costFrom(groups, groupCount, column, row, here)
          keep(row * framed(FRAME.columns) + column, action, cost)
        }
      }
    },
  }
}

interface Tally {
  sum: number
  back: number
}

/** From so small a share that does not go back on, a shot never ends the hole. */
const LEAST_LEFT = 1e-6

function held(index: number, size: number): number {
  return Math.min(size - 1, Math.max(0, index))
}
