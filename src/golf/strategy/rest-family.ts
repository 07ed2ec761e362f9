import type { Places } from './places.ts'
import { isRestKnown, keepRest, type RestTable, restTable } from './rest-table.ts'
import { type RunGround, type RunWay, restsAlong } from './rests-along.ts'

/** Tables of runs of different lengths along one way: a ball is followed once for all of them. */
export interface RestFamily {
  /** Adds the table of a run of so many steps, by number of the landing; negative is back. */
  add(stepsAt: (index: number) => number): RestTable
}

/** Tables for landings in `size` places, by number. */
export function restFamily(
  ground: RunGround,
  way: RunWay,
  size: number,
  placeOf: (index: number) => number,
): RestFamily {
  const { places } = ground
  const members: Member[] = []
  return {
    add(stepsAt) {
      const member: Member = {
        stepsAt,
        table: restTable(
          places,
          size,
          (index) => follow(stepsAt(index), index),
          (index) => followAll(member, index),
        ),
      }
      members.push(member)
      return member.table
    },
  }

  function follow(steps: number, index: number): number {
    const length = Math.abs(steps)
    const rests = roomFor(AHEAD, length)
    restsAlong(ground, placeOf(index), way, steps < 0, length, rests)
    return rests[length] as number
  }

  /** What becomes of a ball of one member; that of all others which is not known yet is kept on the way. */
  function followAll(asked: Member, index: number): number {
    const place = placeOf(index)
    const [back, on] = farthest(places, members, index)
    const [ahead, behind] = [roomFor(AHEAD, on), roomFor(BEHIND, back)]
    if (on >= 0) restsAlong(ground, place, way, false, on, ahead)
    if (back > 0) restsAlong(ground, place, way, true, back, behind)
    let rest = 0
    for (const member of members) {
      if (isRestKnown(places, member.table, index)) continue
      const steps = member.stepsAt(index)
      const outcome = (steps < 0 ? behind[-steps] : ahead[steps]) as number
      if (member === asked) rest = outcome
      else keepRest(places, member.table, index, outcome)
    }
    return rest
  }
}

interface Member {
  readonly table: RestTable
  readonly stepsAt: (index: number) => number
}

/** The longest runs back and on among the members that do not know yet what becomes of a ball. */
function farthest(
  places: Places,
  members: readonly Member[],
  index: number,
): readonly [back: number, on: number] {
  let back = 0
  let on = -1
  for (const { table, stepsAt } of members) {
    if (isRestKnown(places, table, index)) continue
    const steps = stepsAt(index)
    if (steps < 0) back = Math.max(back, -steps)
    else on = Math.max(on, steps)
  }
  return [back, on]
}

/** Room that is used again by every ball: nothing is kept in it. */
const AHEAD: Room = { rests: new Int32Array(64) }
const BEHIND: Room = { rests: new Int32Array(64) }

interface Room {
  rests: Int32Array
}

function roomFor(room: Room, most: number): Int32Array {
  if (room.rests.length <= most) room.rests = new Int32Array(2 * most + 1)
  return room.rests
}
