import { Failure } from '#faults/failure.ts'
import { faultOf } from '#golf/player/player-from-answers.ts'
import { type Answers, FIELDS, type Field, isAsked, QUESTIONS } from '#golf/player/player-questions.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** A person at a terminal: shown words, and asked for a line; `null` when they broke off. */
export interface Person {
  readonly say: (words: string) => void
  readonly ask: (prompt: string) => Promise<string | null>
}

/**
 * Asks the ten questions one line at a time: `?` helps, an empty line is "don't know", `<` goes back. An answer that
 * cannot stand is asked again with the reason. Throws MAR-ANSWER-012 when the person breaks off.
 */
export async function askQuestions(person: Person, units: ReaderUnits): Promise<Answers> {
  person.say(`Ten questions. Empty: don't know. ?: help. <: back. Ctrl-C: stop, nothing is kept.\n`)
  let answers: Answers = {}
  let place = 0
  let titled = -1
  for (let field = FIELDS[0]; field !== undefined; field = FIELDS[place]) {
    const number = QUESTIONS.findIndex(({ fields }) => fields.includes(field as Field))
    if (number !== titled) person.say(`\n${number + 1}. ${QUESTIONS[number]?.title ?? ''}\n`)
    titled = number
    for (const [index, { words }] of (field.choices ?? []).entries())
      person.say(`   ${index + 1}  ${words}\n`)
    const line = await person.ask(prompt(field, answers, units))
    if (line === null)
      throw new Failure('MAR-ANSWER-012', 'The questions were broken off; nothing was written.')
    const text = line.trim()
    if (text === '?') {
      person.say(`   ${field.help}\n`)
      continue
    }
    if (text === '<') {
      place = previous(place, answers)
      continue
    }
    // An answer given before stays when the person came back and only goes on.
    const answered = text === '' ? answers : { ...answers, [field.id]: text === '-' ? '' : text }
    const fault = faultOf(field.id, answered, units)
    if (fault !== null) {
      person.say(`   ${fault.message} ${fault.advice}\n`)
      continue
    }
    answers = answered
    place = next(place, answers)
  }
  return answers
}

function next(place: number, answers: Answers): number {
  const later = FIELDS.findIndex((field, index) => index > place && isAsked(field, answers))
  return later === -1 ? FIELDS.length : later
}

function previous(place: number, answers: Answers): number {
  const earlier = FIELDS.findLastIndex((field, index) => index < place && isAsked(field, answers))
  return Math.max(0, earlier)
}

function prompt(field: Field, answers: Answers, units: ReaderUnits): string {
  const unit = field.kind === 'carries' ? ` (${units})` : field.unit === 'years' ? ' (years)' : ''
  const before = answers[field.id] ?? ''
  return `   ${field.ask}${unit}${before === '' ? '' : ` [${before}; - takes it out]`} `
}
