import { STATIONS, type Station } from '#golf/player/test-day-stations.ts'
import type { Drawing, Shape } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps, rectangleSteps } from './steps.ts'

/** What stands on the sheet beside the boxes. */
export interface TestSheetOptions {
  readonly playerName: string
  /** How each station is told to a person: `putt from 2 m`, `chip from fairway, 16 yd`. */
  readonly stationWords: (station: Station) => string
  /** `paces` or `feet`: what leaves are written in. */
  readonly leaveUnit: string
}

const WIDTH = 620
const MARGIN = 40
const ROW = 66
const BOX = 36
const TOP = 150

/**
 * The sheet of a test day: a row a station, a box a ball. A cross is a holed ball; where leaves are measured the number is
 * written. The same sheet every quarter.
 */
export function drawTestSheet({ playerName, stationWords, leaveUnit }: TestSheetOptions): Drawing {
  const height = TOP + STATIONS.length * ROW + 60
  const text = (
    words: string,
    at: readonly [number, number],
    size: number,
    face: 'serif' | 'serif-bold' | 'serif-italic',
  ): Shape => ({
    kind: 'text',
    text: words,
    at,
    size,
    paint: 'ink',
    face,
  })
  return {
    width: WIDTH,
    height,
    title: `Test day of ${playerName}`,
    description: STATIONS.map((station) => `${stationWords(station)}: ${station.balls} balls.`).join(' '),
    shapes: [
      text('Test day', [MARGIN, 54], DRAW_SETTINGS.titleType, 'serif'),
      text(playerName, [MARGIN, 82], 14, 'serif'),
      text('Date ____________', [MARGIN + 250, 82], 14, 'serif'),
      text('Green speed ______', [MARGIN + 400, 82], 14, 'serif'),
      text(
        'Each ball from a new spot, the putts on a part as level as there is; only the first putt counts.',
        [MARGIN, 106],
        DRAW_SETTINGS.type,
        'serif-italic',
      ),
      text(
        `Holed: a cross. Missed: a stroke, or the ${leaveUnit} left where a box has a corner; x before it if not on the green.`,
        [MARGIN, 122],
        DRAW_SETTINGS.type,
        'serif-italic',
      ),
      ...STATIONS.flatMap((station, row) => [
        text(stationWords(station), [MARGIN, TOP + row * ROW + 12], 13, 'serif-bold'),
        text(
          station.name,
          [WIDTH - MARGIN - 110, TOP + row * ROW + 12],
          DRAW_SETTINGS.smallType,
          'serif-italic',
        ),
        ...boxes(station, TOP + row * ROW + 18),
      ]),
      text(
        'Nobody stands or walks where balls may come. Stop when there is lightning; drink in heat.',
        [MARGIN, height - 22],
        DRAW_SETTINGS.type,
        'serif-italic',
      ),
    ],
  }
}

function boxes(station: Station, top: number): Shape[] {
  return Array.from({ length: station.balls }, (_, ball): Shape => {
    const left = MARGIN + ball * (BOX + 8)
    return {
      kind: 'path',
      steps: [
        ...rectangleSteps(left, top, BOX, BOX),
        ...(station.hasLeaves ? lineSteps([left + BOX - 12, top + BOX], [left + BOX, top + BOX - 12]) : []),
      ],
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    }
  })
}
