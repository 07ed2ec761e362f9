import { type ClubKind, clubKind } from '../club-names.ts'
import { clubWords } from '../club-words.ts'
import { parseClubName } from '../parse-club-name.ts'
import { MOST_CLUBS } from '../settings.ts'
import { type AnswerFault, answerFault } from './answer-fault.ts'

/** Names of the clubs in a list such as `driver, 5w, 6i-PW, 52`, each once; or what is wrong with it. */
export function readClubs(text: string): readonly string[] | AnswerFault {
  const names: string[] = []
  for (const word of text.split(/[,;\n]/).map((part) => part.trim())) {
    if (word === '') continue
    for (const spelling of irons(word) ?? [word]) {
      const club = readClub(spelling)
      if (club === 'putter') continue
      if (typeof club !== 'string') return club
      if (names.includes(club)) {
        const message = `The ${clubWords(club)} is there twice.`
        return answerFault('MAR-ANSWER-005', message, 'Take one of them out.')
      }
      names.push(club)
    }
  }
  if (names.length > MOST_CLUBS) {
    const message = `These are ${names.length} clubs; with the putter a bag holds ${MOST_CLUBS + 1} (Rule 4.1b).`
    return answerFault('MAR-ANSWER-006', message, 'Leave some out.')
  }
  return names
}

/** The club of one word, by its name in a player file; the putter by itself; or what is wrong with it. */
export function readClub(word: string): string | AnswerFault {
  const spelled = parseClubName(word)
  if (spelled.kind === 'putter') return 'putter'
  if (spelled.kind === 'club') return spelled.name
  const advice =
    spelled.likely.length === 0
      ? 'Write it like driver, 3w, 5 wood, 4h, 7i, PW, SW or 52.'
      : `Is it the ${spelled.likely.map(clubWords).join(', the ')}?`
  return answerFault('MAR-ANSWER-004', `"${word}" is not a club known by name.`, advice)
}

/** What kind of club a name of a player file is. */
export function kindOf(name: string): ClubKind {
  const kind = clubKind(name)
  if (kind === null) throw new RangeError(`${name} came from no spelling`)
  return kind
}

/** Spellings of a run of irons, `6i-PW`, `4 to 9 iron`; `null` when the word is no run. */
function irons(word: string): readonly string[] | null {
  const found = /^([1-9]) ?(?:i|irons?)? ?(?:-|–|to) ?(?:([2-9]) ?(?:i|irons?)|(pw|pitching wedge))$/i.exec(
    word,
  )
  if (found === null) return null
  const [, from = '', to, wedge] = found
  const last = wedge === undefined ? Number(to) : 9
  if (last < Number(from)) return null
  const numbers = Array.from({ length: last - Number(from) + 1 }, (_, index) => `${Number(from) + index}i`)
  return wedge === undefined ? numbers : [...numbers, 'pw']
}
