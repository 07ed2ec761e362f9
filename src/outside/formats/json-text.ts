import { Failure } from '#faults/failure.ts'

/** A JSON object of unknown content. */
export type JsonObject = Readonly<Record<string, unknown>>

/** Whether a value of unknown origin is a JSON object (not an array, not null). */
export function isJsonObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** The JSON value of a text; a byte order mark is skipped. Throws `MAR-IMPORT-002` with the line where reading stopped. */
export function parseJsonText(text: string, where: string): unknown {
  const body = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text
  try {
    return JSON.parse(body)
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause)
    const line = lineOfError(body, reason)
    const isCut = /end of JSON|unterminated/i.test(reason)
    throw new Failure(
      'MAR-IMPORT-002',
      isCut
        ? `This is not complete JSON: it ends in the middle, at line ${line}. Fetch or save the file again.`
        : `This is not JSON: something unexpected stands on line ${line}. Open the file in a text editor there.`,
      `${where}, line ${line}`,
    )
  }
}

// V8 says "at position 123" (sometimes with line and column) or that the text ended.
function lineOfError(text: string, reason: string): number {
  const position = /position (\d+)/.exec(reason)?.[1]
  const end = position === undefined ? text.trimEnd().length : Number(position)
  let line = 1
  for (let i = 0; i < end && i < text.length; i++) if (text.charCodeAt(i) === 10) line++
  return line
}
