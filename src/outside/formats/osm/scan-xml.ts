import { Failure } from '#faults/failure.ts'

/** A start or end of an XML element; an empty element gives both. */
export interface XmlTag {
  readonly kind: 'open' | 'close'
  readonly name: string
  /** Entities are resolved. Empty on a close. */
  readonly attributes: Readonly<Record<string, string>>
}

const OPEN = /<([A-Za-z_][\w:.-]*)((?:\s+[A-Za-z_][\w:.-]*\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>/y
const CLOSE = /<\/([A-Za-z_][\w:.-]*)\s*>/y
const ATTRIBUTE = /([A-Za-z_][\w:.-]*)\s*=\s*(?:"([^"]*)"|'([^']*)')/g
const SKIPPED: readonly (readonly [start: string, end: string])[] = [
  ['<!--', '-->'],
  ['<![CDATA[', ']]>'],
  ['<?', '?>'],
  ['<!', '>'],
]

/**
 * The tags of an XML text in order; text between them is left out, since map data has none. Declared entities are
 * not expanded. Throws `MAR-IMPORT-001` with the line where the text is broken or ends too early.
 */
export function* scanXml(text: string, where: string): Generator<XmlTag> {
  const open: { name: string; at: number }[] = []
  let at = text.indexOf('<')
  while (at !== -1) {
    const skipped = SKIPPED.find(([start]) => text.startsWith(start, at))
    if (skipped) {
      const end = text.indexOf(skipped[1], at + skipped[0].length)
      if (end === -1) throw cutOff(text, open, where)
      at = text.indexOf('<', end + skipped[1].length)
      continue
    }
    CLOSE.lastIndex = at
    const close = CLOSE.exec(text)
    if (close) {
      const name = close[1] ?? ''
      const expected = open.pop()
      if (expected?.name !== name) {
        throw broken(
          text,
          at,
          `</${name}> closes nothing that is open${expected ? ` (<${expected.name}> is)` : ''}`,
          where,
        )
      }
      yield { kind: 'close', name, attributes: {} }
      at = text.indexOf('<', CLOSE.lastIndex)
      continue
    }
    OPEN.lastIndex = at
    const start = OPEN.exec(text)
    if (!start) {
      if (text.indexOf('>', at) === -1) throw cutOff(text, open, where)
      throw broken(text, at, 'there is a tag that is not well formed', where)
    }
    const name = start[1] ?? ''
    yield { kind: 'open', name, attributes: readAttributes(start[2] ?? '') }
    if (start[3] === '/') yield { kind: 'close', name, attributes: {} }
    else open.push({ name, at })
    at = text.indexOf('<', OPEN.lastIndex)
  }
  if (open.length > 0) throw cutOff(text, open, where)
}

function readAttributes(text: string): Record<string, string> {
  const attributes: Record<string, string> = {}
  for (const [, key, double, single] of text.matchAll(ATTRIBUTE)) {
    if (key !== undefined) attributes[key] = resolveEntities(double ?? single ?? '')
  }
  return attributes
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }

function resolveEntities(text: string): string {
  if (!text.includes('&')) return text
  return text.replace(/&(?:#(\d+)|#x([0-9a-f]+)|(\w+));/gi, (whole, decimal, hex, name) => {
    if (name !== undefined) return ENTITIES[name] ?? whole
    const code = decimal !== undefined ? Number(decimal) : Number.parseInt(hex, 16)
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole
  })
}

function lineAt(text: string, at: number): number {
  let line = 1
  for (let i = text.indexOf('\n'); i !== -1 && i < at; i = text.indexOf('\n', i + 1)) line++
  return line
}

function broken(text: string, at: number, what: string, where: string): Failure {
  const line = lineAt(text, at)
  return new Failure(
    'MAR-IMPORT-001',
    `The XML is broken: on line ${line} ${what}.`,
    `${where}, line ${line}`,
  )
}

function cutOff(text: string, open: readonly { name: string; at: number }[], where: string): Failure {
  const line = lineAt(text, text.trimEnd().length)
  const inner = open.at(-1)
  const unfinished = inner ? `; <${inner.name}> from line ${lineAt(text, inner.at)} is not closed` : ''
  return new Failure(
    'MAR-IMPORT-001',
    `The XML ends too early, on line ${line}${unfinished}. Fetch or save the file again.`,
    `${where}, line ${line}`,
  )
}
