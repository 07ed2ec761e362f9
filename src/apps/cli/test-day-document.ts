import type { Fault } from '#faults/fault.ts'
import type { LearnedTestDay, TestedNumber } from '#golf/player/learn-test-day.ts'
import type { Player } from '#golf/player/player.ts'
import { STATIONS } from '#golf/player/test-day-stations.ts'

/** `test-day/1`: the stations, and what the results say where there are any. */
export function testDayDocument(
  player: Player,
  learned: LearnedTestDay | null,
  faults: readonly Fault[],
): object {
  const number = ({ before, after, ninety }: TestedNumber): object => ({
    before,
    after,
    low: ninety[0],
    high: ninety[1],
  })
  return {
    schema: 'test-day/1',
    player: player.name,
    stations: STATIONS.map(({ name, lie, metres, balls }) => ({ name, lie, distance_m: metres, balls })),
    learned: learned && {
      putts: learned.putts,
      short_shots: learned.shortShots,
      putting_direction_sd_deg: number(learned.directionSdDegrees),
      putting_distance_sd_share: number(learned.distanceSdShare),
      strokes_lost: number(learned.strokesLost),
    },
    faults,
  }
}
