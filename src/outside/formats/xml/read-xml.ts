import { SaxesParser } from 'saxes'
import { Failure } from '#faults/failure.ts'

/** A start or end of an XML element; an empty element gives both. */
export interface XmlTag {
  readonly kind: 'open' | 'close'
  /** Without its prefix. */
  readonly name: string
  /** Entities are resolved. Empty on a close. */
  readonly attributes: Readonly<Record<string, string>>
  /** On a close the text directly in the element, trimmed; empty on an open. */
  readonly text: string
  /** Line in the file, from 1. */
  readonly line: number
}

/** The tags of an XML text in order, as far as it is well formed. */
export interface XmlReading {
  readonly tags: readonly XmlTag[]
  /** Where and why reading ended before the end of the text; `null` when it is whole. */
  readonly broken: Failure | null
}

/** Reads XML 1.0 (W3C). Declared entities are not expanded. Never throws: what stands before a break is kept, with `MAR-IMPORT-001`. */
export function readXml(text: string, where: string): XmlReading {
  const tags: XmlTag[] = []
  const texts: string[] = []
  const open: { name: string; line: number }[] = []
  let broken: Failure | null = null
  const parser = new SaxesParser({ position: true, xmlns: false })
  parser.on('error', (error) => {
    broken ??= breakOf(error.message, parser.line, where, open.at(-1))
  })
  parser.on('text', (piece) => {
    const last = texts.length - 1
    if (last >= 0) texts[last] += piece
  })
  parser.on('opentag', ({ name, attributes }) => {
    if (broken !== null) return
    tags.push({ kind: 'open', name: localName(name), attributes, text: '', line: parser.line })
    open.push({ name, line: parser.line })
    texts.push('')
  })
  parser.on('closetag', ({ name }) => {
    if (broken !== null) return
    open.pop()
    const inside = (texts.pop() ?? '').trim()
    tags.push({ kind: 'close', name: localName(name), attributes: {}, text: inside, line: parser.line })
  })
  parser.write(text.trimEnd())
  if (broken === null) parser.close()
  return { tags, broken }
}

/** The tags of a whole XML text. Throws `MAR-IMPORT-001` with the line where it is broken or ends too early. */
export function wholeXml(text: string, where: string): readonly XmlTag[] {
  const { tags, broken } = readXml(text, where)
  if (broken !== null) throw broken
  return tags
}

function localName(name: string): string {
  return name.slice(name.indexOf(':') + 1)
}

function breakOf(
  message: string,
  line: number,
  where: string,
  inner: { readonly name: string; readonly line: number } | undefined,
): Failure {
  const place = `${where}, line ${line}`
  // What the parser says at the end of the text: something is still open.
  if (/unclosed|unexpected end|must contain a root/i.test(message)) {
    const unfinished = inner === undefined ? '' : `; <${inner.name}> from line ${inner.line} is not closed`
    return new Failure(
      'MAR-IMPORT-001',
      `The XML ends too early, on line ${line}${unfinished}. Fetch or save the file again.`,
      place,
    )
  }
  const what = message.replace(/^\d+:\d+: /, '').replace(/\.$/, '')
  return new Failure('MAR-IMPORT-001', `The XML is broken: on line ${line} ${what}.`, place)
}
