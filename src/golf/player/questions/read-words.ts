import type { Field } from '../player-questions.ts'
import { type AnswerFault, answerFault } from './answer-fault.ts'

/** A number with point or comma; `+2` of a handicap index is better than scratch and becomes −2. */
export function readNumber(text: string, field: Field): number | AnswerFault {
  const plain = text.replace(',', '.').replace(/^[−–]/, '-')
  const isPlus = field.id === 'handicapIndex' && plain.startsWith('+')
  const number = /^[+-]?\d+(?:\.\d+)?$/.test(plain) ? Number(plain) * (isPlus ? -1 : 1) : Number.NaN
  const [least, most] = field.range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  if (number >= least && number <= most) return number === 0 ? 0 : number
  const advice = `Write a number from ${least} to ${most}.`
  const message = Number.isNaN(number) ? `"${text}" is no number.` : `${text} is not believed.`
  return answerFault('MAR-ANSWER-003', message, advice)
}

/** The value of a choice, by its value, its place in the list from 1, or the start of its words. */
export function readChoice(text: string, field: Field): string | AnswerFault {
  const choices = field.choices ?? []
  const wanted = text.toLowerCase()
  const exact = choices.find(({ value, words }) => value === wanted || words.toLowerCase() === wanted)
  const byPlace = /^\d$/.test(wanted) ? choices[Number(wanted) - 1] : undefined
  const begun = choices.filter(({ words }) => words.toLowerCase().startsWith(wanted))
  const chosen = exact ?? byPlace ?? (begun.length === 1 ? begun[0] : undefined)
  if (chosen !== undefined) return chosen.value
  const known = choices.map(({ words }, index) => `${index + 1} ${words}`).join('; ')
  return answerFault('MAR-ANSWER-002', `"${text}" is none of the choices.`, `Choose one of: ${known}.`)
}

/** A name of one line; of a minor the first name only, which may have a hyphen. */
export function readName(text: string, isMinor: boolean): string | AnswerFault {
  const name = text.replaceAll(/\s+/g, ' ')
  if (/\p{Cc}/u.test(name) || name.length > MOST_LETTERS) {
    const message = `A name has at most ${MOST_LETTERS} letters and nothing that cannot be seen.`
    return answerFault('MAR-ANSWER-008', message, 'Shorten it.')
  }
  if (isMinor && name.includes(' ')) {
    const advice = `Write ${name.split(' ')[0]}, or two first names with a hyphen.`
    return answerFault('MAR-ANSWER-008', 'A player under 18 is kept by first name only.', advice)
  }
  return name
}

/** Letters that fit the head of a page. Our assumption. */
const MOST_LETTERS = 60
