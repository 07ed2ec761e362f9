import { greenSlowing } from '../src/golf/ball/green-slowing.ts'
import { greenPutting, greenRolls } from '../src/golf/player/green-putting.ts'
import { priorPutting } from '../src/golf/player/prior-near-green.ts'
import { puttLine, readPutt } from '../src/golf/player/read-putt.ts'
import { feetToMetres, metresToFeet } from '../src/numbers/units/units.ts'

const SPEEDS_FEET = [8, 10, 12]
const LENGTHS_FEET = [3, 6, 10, 15, 20, 30, 45]
const PERCENTS = [1, 2, 3, 4]
/** Pace of all lines on the page, metres past the hole on a level green: a foot. */
const PAST_METRES: number = feetToMetres(1)
const CHANCE_LENGTHS_FEET = [6, 10, 20, 40]
const CHANCE_PERCENTS = [2, 4]
const LEVELS = [
  ['tour player', -5],
  ['index 5', 5],
  ['index 18', 18],
] as const

/** The text of `docs/putting-lesson.md`: break and playing length by length, slope and green speed, and what they cost. */
export function puttingLessonPage(): string {
  return `${OPENING}\n${SPEEDS_FEET.map(speedSection).join('\n')}\n${chanceSection()}`
}

/** A putt on a plane that rises this way, per cent towards the right of the y axis and along it, the hole at the origin. */
function onPlane(
  right: number,
  up: number,
  speedFeet: number,
): { hole: [number, number]; slopes: { gradientAt: () => readonly [number, number] }; slowing: number } {
  return {
    hole: [0, 0],
    slopes: { gradientAt: () => [right / 100, up / 100] },
    slowing: greenSlowing(speedFeet),
  }
}

function speedSection(speedFeet: number): string {
  const breaks = LENGTHS_FEET.map((feet) => [
    `${feet} ft`,
    ...PERCENTS.map((percent) => {
      const line = puttLine([0, -feetToMetres(feet)], onPlane(percent, 0, speedFeet), PAST_METRES)
      return line === null ? '–' : `${(100 * line.breakMetres).toFixed(0)} cm`
    }),
  ])
  const lengths = LENGTHS_FEET.map((feet) => [
    `${feet} ft`,
    ...PERCENTS.map((percent) => {
      const plays = [percent, -percent].map((rise) => {
        const line = puttLine([0, -feetToMetres(feet)], onPlane(0, rise, speedFeet), PAST_METRES)
        return line === null ? '–' : metresToFeet(line.playingMetres).toFixed(1)
      })
      return `${plays.join(' / ')} ft`
    }),
  ])
  return `## Green speed ${speedFeet} ft

Break of a putt straight across the fall: how far beside the middle of the hole, on its high side, the ball is started.

${table(['putt', ...PERCENTS.map((percent) => `${percent} %`)], breaks)}
Playing length straight up / straight down the fall.

${table(['putt', ...PERCENTS.map((percent) => `${percent} %`)], lengths)}`
}

function chanceSection(): string {
  const sections = LEVELS.map(([name, handicap]) => {
    const player = { putting: priorPutting(handicap) }
    const greens = [0, ...CHANCE_PERCENTS].map((percent) => {
      const rolls = greenRolls({ ...onPlane(0, percent, 10), reachMetres: feetToMetres(45) })
      return { percent, rolls, putting: greenPutting(player, rolls) }
    })
    const rows = CHANCE_LENGTHS_FEET.map((feet) => {
      const metres = feetToMetres(feet)
      const cells = greens.flatMap(({ percent, rolls, putting }) => {
        const places: [number, number][] =
          percent === 0
            ? [[0, -metres]]
            : [
                [0, -metres],
                [0, metres],
                [metres, 0],
              ]
        return places.map((from) => {
          const reading = readPutt(from, player, rolls, putting)
          return reading === null
            ? '–'
            : `${(100 * reading.onePutt).toFixed(0)} / ${(100 * reading.threePutt).toFixed(0)} %`
        })
      })
      return [`${feet} ft`, ...cells]
    })
    const heads = CHANCE_PERCENTS.flatMap((percent) => [`${percent} % up`, 'down', 'across'])
    return `${name[0]?.toUpperCase()}${name.slice(1)}:\n\n${table(['putt', 'level', ...heads], rows)}`
  })
  return `## What slopes cost

Chance of one putt / of three or more, green speed 10 ft, at the pace and aim with the fewest expected putts. The level figures are the putting table's, which is fitted to published ones; what slopes add is the model's ([method.md](method.md), section 6), with our assumptions on how well slopes are read. Straight down the fall a ball that starts off line is brought back towards it, so short putts down are holed as often as up, and leave more when they miss.

${sections.join('\n')}`
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`
  return `${[line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')}\n`
}

const OPENING = `# Putts on slopes, for lessons

Written by \`npm run putting-lesson\`; a test keeps this page equal to what the program computes today. Every putt here is on a plane and paced to roll a foot past the hole on the level; the physics is in [method.md](method.md), section 6. A firmer pace breaks less. The hole is 10.8 cm wide.

For lessons and practice. In a counting round nothing may read the line of play for a player (Rules of Golf 2023, 4.3a); the Committee decides.
`
