import { type LearnedNearGreen, nearGreenPosterior } from './near-green-posterior.ts'
import type { Player } from './player.ts'
import { fitPuttingTest } from './test-day/fit-putting-test.ts'
import { fitShortTest } from './test-day/fit-short-test.ts'
import type { TestDayResults } from './test-day-results.ts'

/** Learns putting and short game from a test day. The numbers of a part that was not played stay as they are. */
export function learnTestDay(player: Player, { stations }: TestDayResults): LearnedNearGreen {
  const putts = stations.reduce((sum, { station, balls }) => sum + (station.kind === 'putt' ? balls : 0), 0)
  return nearGreenPosterior(player, {
    putting: fitPuttingTest(player, stations),
    putts,
    puttsWorth: putts,
    strokesLost: (putting) => fitShortTest({ ...player, putting }, stations),
  })
}
