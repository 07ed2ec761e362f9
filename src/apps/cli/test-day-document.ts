import type { Fault } from '#faults/fault.ts'
import type { LearnedNearGreen } from '#golf/player/near-green-posterior.ts'
import type { Player } from '#golf/player/player.ts'
import { STATIONS } from '#golf/player/test-day-stations.ts'
import { nearGreenDocument } from './near-green-document.ts'

/** `test-day/1`: the stations, and what the results say where there are any. */
export function testDayDocument(
  player: Player,
  learned: LearnedNearGreen | null,
  faults: readonly Fault[],
): object {
  return {
    schema: 'test-day/1',
    player: player.name,
    stations: STATIONS.map(({ name, lie, metres, balls }) => ({ name, lie, distance_m: metres, balls })),
    learned: learned && nearGreenDocument(learned),
    faults,
  }
}
