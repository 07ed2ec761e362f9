import type { Fault } from '#faults/fault.ts'
import { logClub } from './log-club.ts'
import { type LogUnit, readDistance } from './read-distance.ts'
import { FINISH_LETTERS, type Finish, isFinishLetter, type RoundHole, type RoundStroke } from './round.ts'
import { LONGEST_LEFT_METRES, MOST_COUNTED } from './settings.ts'
import { unknownStroke } from './unknown-stroke.ts'

/** One line of a paper log: the hole, `null` when it names none, and what was wrong with it. */
export interface LoggedLine {
  readonly hole: RoundHole | null
  readonly faults: readonly Fault[]
}

/**
 * One hole of a paper log, `7: driver f-180 / 5i r-25 / sw g-6 / 2 putts`, or its score alone, `7: 5`. `number` counts lines from
 * 1.
 */
export function parseLogLine(typed: string, number: number, unit: LogUnit): LoggedLine {
  // Dashes as phones and word processors set them.
  const line = typed.replaceAll(/[‐-―−]/g, '-')
  const faults: Fault[] = []
  const place = `line ${number}`
  const start = /^\s*(?:hole\s+)?([A-Za-z0-9]{1,4})\s*[:.)]\s*|^\s*(?:hole\s+)?(\d{1,2}[A-Za-z]?)\s+/i.exec(
    line,
  )
  if (!start || line.slice(start[0].length).trim() === '')
    return {
      hole: null,
      faults: [
        {
          severity: 'error',
          code: 'MAR-ROUND-006',
          message: start
            ? 'The line has a hole and no strokes.'
            : 'The line does not begin with a hole and a colon.',
          place: `${place}, column ${start ? start[0].length + 1 : 1}`,
          advice: 'Write it like 7: driver f-180 / 5i r-25 / sw g-6 / 2 putts.',
        },
      ],
    }
  const strokes: RoundStroke[] = []
  const counted = { putts: 0, isPickedUp: false }
  let column = start[0].length
  const entries = line.slice(column).split('/')
  // A stroke too many at the end of a line is a slip of the pen.
  if (entries.length > 1 && entries.at(-1)?.trim() === '') entries.pop()
  const inAll = /^\s*(\d+)\s*$/.exec(line.slice(column))
  if (inAll && Number(inAll[1]) >= 1 && Number(inAll[1]) <= MOST_COUNTED) {
    const ref = (start[1] ?? start[2]) as string
    const strokes = Array.from({ length: Number(inAll[1]) }, () => unknownStroke(place))
    return { hole: { ref, strokes, putts: 0, firstPuttMetres: null, isPickedUp: false, place }, faults }
  }
  if (/^\s*[+-]?\d+(?:[.,]\d+)?\s*$/.test(line.slice(column)))
    return {
      hole: null,
      faults: [
        {
          severity: 'error',
          code: 'MAR-ROUND-007',
          message: `"${line.slice(column).trim()}" is no score of a hole.`,
          place: `${place}, stroke 1, column ${column + 1}`,
          advice: `Write a whole number from 1 to ${MOST_COUNTED}, or the strokes.`,
        },
      ],
    }
  for (const [index, entry] of entries.entries()) {
    const at = `${place}, stroke ${index + 1}, column ${column + entry.search(/\S|$/) + 1}`
    column += entry.length + 1
    const say = (message: string, advice: string): void => {
      faults.push({ severity: 'error', code: 'MAR-ROUND-007', message, place: at, advice })
    }
    const text = entry.trim()
    const isLast = index === entries.length - 1
    const putts = /^(\d+)\s*(?:putts?|p)$/i.exec(text)
    if (isLast && putts && Number(putts[1]) <= MOST_COUNTED) counted.putts = Number(putts[1])
    else if (isLast && /^pick(ed)?[ -]?up$/i.test(text)) counted.isPickedUp = true
    else {
      const stroke = readStroke(text, unit, at, say)
      strokes.push(stroke)
      // What cannot be read at the end may have been anything: putts, another stroke.
      if (isLast && isUnread(stroke) && text !== '' && faults.some((fault) => fault.place === at))
        counted.isPickedUp = true
      if (!isLast && stroke.finish === null && !faults.some((fault) => fault.place === at))
        say(
          `"${text}" does not say where the ball finished.`,
          `Write a letter and what was left, like r-25; the letters: ${LETTERS}.`,
        )
    }
  }
  const hole: RoundHole = {
    ref: (start[1] ?? start[2]) as string,
    strokes,
    firstPuttMetres: null,
    place,
    ...counted,
  }
  return { hole, faults }
}

function isUnread({ club, finish, isAsPlanned }: RoundStroke): boolean {
  return club === null && finish === null && !isAsPlanned
}

const LETTERS = Object.entries(FINISH_LETTERS)
  .map(([letter, words]) => `${letter} ${words}`)
  .join(', ')

/**
 * `driver f-180`, `sw x-30 +1`: club, letter with what was left, penalty strokes; `driver= f-180`, or `= f-180` alone, was
 * hit as planned, club and line. What cannot be read is said and left open.
 */
function readStroke(
  text: string,
  unit: LogUnit,
  place: string,
  say: (message: string, advice: string) => void,
): RoundStroke {
  const penalised = /^(.*?)\s*\+\s*(\d)$/.exec(text)
  const rest = penalised ? (penalised[1] as string) : text
  const { words: marked, finish } = splitFinish(rest, unit, say)
  const isAsPlanned = marked.endsWith('=')
  const words = isAsPlanned ? marked.slice(0, -1).trim() : marked
  const club = words === '' ? null : logClub(words)
  if (words === '' && text === '')
    say('Two strokes are parted by nothing.', 'Write the stroke, or strike one of the two /.')
  else if (words !== '' && club === null)
    say(`"${words}" is no club.`, 'Write it like driver, 3w, 5h, 7i, pw, sw or putter.')
  const penalty = penalised ? Number(penalised[2]) : null
  return { ...unknownStroke(place), club, finish, penalty, isAsPlanned }
}

function splitFinish(
  text: string,
  unit: LogUnit,
  say: (message: string, advice: string) => void,
): { readonly words: string; readonly finish: Finish | null } {
  const found =
    /^(?:(.*?)\s+)?([a-z])(?:\s*-\s*(\S.*)|(\d\S*))$/i.exec(text) ?? /^(?:(.*?)\s+)?([a-z])$/i.exec(text)
  // A number alone after a club's letter is the club: i7, h5.
  if (!found || (found[1] === undefined && logClub(text) !== null)) return { words: text, finish: null }
  const words = (found[1] ?? '').trim()
  const letter = (found[2] as string).toLowerCase()
  const written = found[3] ?? found[4]
  if (!isFinishLetter(letter)) {
    say(`"${letter}" is no letter of a finish.`, `The letters: ${LETTERS}.`)
    return { words, finish: null }
  }
  if (written === undefined) return { words, finish: { letter, leftMetres: null } }
  const leftMetres = readDistance(written, unit)
  if (leftMetres === null || leftMetres > LONGEST_LEFT_METRES) {
    say(
      `"${written}" is no distance that can be left.`,
      'Write a number, with m, yd or ft where it is not the unit of the log.',
    )
    return { words, finish: { letter, leftMetres: null } }
  }
  return { words, finish: { letter, leftMetres } }
}
