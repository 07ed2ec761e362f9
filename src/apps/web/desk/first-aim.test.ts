import { describe, expect, it } from 'vitest'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { area, course, holeLine, rectangle } from '#golf/course/invented-course.fixture.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import { firstAim } from './first-aim.ts'

const player = completePlayer(
  parsePlayer(JSON.stringify({ schema: 'player/1', name: 'Anna', hand: 'right', handicapIndex: 12 }), 'anna'),
)

/** A hole whose pin lies so far ahead and aside of the line off the tee, metres. */
function holeTo(pinX: number, pinY: number) {
  const line = [
    [0, 0],
    [0, pinY / 2],
    [pinX, pinY],
  ] as const
  const green = rectangle(pinX - 10, pinY - 10, pinX + 10, pinY + 10)
  return holeFromCourse(course({ holes: [holeLine('1', line)], areas: [area('green', 'green', green)] }), '1')
}

describe('where an aim begins without a plan', () => {
  it('is along the hole line with the longest club where the pin is out of reach', () => {
    const aimed = firstAim(holeTo(0, 400), player, null)!
    expect(aimed.club).toBe(player.clubs[0]!.name)
    expect([aimed.aim.heading_deg, aimed.aim.offset_m]).toEqual([0, 0])
    expect(aimed.total_m).toBe(player.clubs[0]!.totalMetres)
  })

  it('is at the pin with the longest club that does not go by it', () => {
    const hole = holeTo(0, 150)
    const aimed = firstAim(hole, player, null)!
    const longer = player.clubs[player.clubs.findIndex(({ name }) => name === aimed.club) - 1]!
    const [x, y] = hole.pin
    expect(aimed.total_m).toBeLessThanOrEqual(Math.hypot(x, y))
    expect(longer.totalMetres).toBeGreaterThan(Math.hypot(x, y))
    expect(aimed.aim.heading_deg).toBeCloseTo((Math.atan2(x, y) * 180) / Math.PI, 12)
  })

  it('is with the club that is looked at, and with the shortest where every club goes by the pin', () => {
    expect(firstAim(holeTo(0, 400), player, '7-iron')!.club).toBe('7-iron')
    expect(firstAim(holeTo(0, 30), player, null)!.club).toBe(player.clubs.at(-1)!.name)
    expect(firstAim(holeTo(0, 400), player, 'a club of another bag')!.club).toBe(player.clubs[0]!.name)
  })
})
