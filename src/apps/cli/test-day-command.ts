import { Failure } from '#faults/failure.ts'
import { encodePlayer } from '#golf/player/encode-player.ts'
import { learnTestDay } from '#golf/player/learn-test-day.ts'
import type { LearnedNearGreen } from '#golf/player/near-green-posterior.ts'
import { readTestResults } from '#outside/formats/test-results.ts'
import { drawTestSheet } from '#paper/draw/draw-test-sheet.ts'
import { renderSvg } from '#paper/draw/render-svg.ts'
import { loadPlayer } from './load-player.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { plainText } from './plain-text.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf, faultLines } from './print-faults.ts'
import { readText } from './read-file.ts'
import { testCurvesPicture } from './test-curves-picture.ts'
import { testDayDocument } from './test-day-document.ts'
import { stationWords, testDayPage } from './test-day-page.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { writeText } from './write-file.ts'

/** The options of `marram test-day`, as typed. */
export interface TestDayOptions extends GlobalOptions {
  readonly results?: string
  readonly out?: string
  readonly sheet?: string
  readonly picture?: string
}

/**
 * `marram test-day`: the sheet of the short-game and putting test, and what its results say of a player. Returns the exit
 * code.
 */
export function testDayCommand(path: string, options: TestDayOptions, machine: Machine): number {
  const units = parseUnits(options.units)
  if (options.picture !== undefined && options.results === undefined)
    throw new Failure(
      'MAR-USAGE-002',
      'The curves are of a test that was played: give --results.',
      '--picture',
    )
  const player = loadPlayer(path)
  if (options.sheet !== undefined) {
    const sheet = drawTestSheet({
      playerName: player.name,
      stationWords: (station) => stationWords(station, units),
      leaveUnit: units === 'yards' ? 'feet' : 'metres',
    })
    writeText(options.sheet, plainText(renderSvg(sheet), false))
  }
  const reading =
    options.results === undefined ? null : readTestResults(readText(options.results), options.results)
  const learned: LearnedNearGreen | null = reading && learnTestDay(player, reading.results)
  const written = learned && options.out ? ['', `The player file with these numbers is ${options.out}.`] : []
  if (learned && options.out !== undefined) writeText(options.out, encodePlayer(learned.player))
  if (reading && learned && options.picture !== undefined)
    writeText(options.picture, testCurvesPicture(player, learned, reading.results, units))
  const faults = reading?.faults ?? []
  if (options.json) printJson(testDayDocument(player, learned, faults), machine)
  else
    printLines([...faultLines(faults, machine), ...testDayPage(player, learned, units), ...written], machine)
  return exitCodeOf(faults)
}
