import { Failure } from '#faults/failure.ts'
import { type Answers, FIELDS, type FieldId } from '#golf/player/player-questions.ts'

/**
 * Answers from the text of a JSON file: `{"name": "Wren", "age": 12, "bag": ["driver", "7i"], "carries": {"7i": 95}}`.
 * Numbers, lists and clubs with their carries may stand as such; `null` is not known. Throws MAR-ANSWER-010.
 */
export function readAnswers(text: string, where: string): Answers {
  const json = jsonOf(text, where)
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    throw new Failure('MAR-ANSWER-010', 'The answers are not one object in braces.', where)
  const answers: Partial<Record<FieldId, string>> = {}
  const known = FIELDS.map(({ id }) => id)
  for (const [name, value] of Object.entries(json)) {
    const id = known.find((one) => one === name)
    if (id === undefined) {
      throw new Failure(
        'MAR-ANSWER-010',
        `"${name}" is not asked. These are: ${known.join(', ')}.`,
        `${where}: ${name}`,
      )
    }
    answers[id] = words(value, `${where}: ${name}`)
  }
  return answers
}

function jsonOf(text: string, where: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new Failure('MAR-ANSWER-010', `The file of answers is not JSON: ${reason}.`, where)
  }
}

function words(value: unknown, where: string): string {
  if (value === null) return ''
  if (typeof value === 'string') return value
  if (typeof value === 'number') return String(value)
  if (Array.isArray(value) && value.every((one) => typeof one === 'string')) return value.join(', ')
  if (typeof value === 'object' && !Array.isArray(value)) {
    const carries = Object.entries(value)
    if (carries.every(([, carry]) => ['number', 'string'].includes(typeof carry)))
      return carries.map(([club, carry]) => `${club} ${carry}`).join(', ')
  }
  throw new Failure(
    'MAR-ANSWER-010',
    'An answer is a text, a number, a list of clubs, or clubs with their carries.',
    where,
  )
}
