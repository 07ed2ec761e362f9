import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { CONTROL_CHARACTER_SHARE, LARGEST_SOURCE_BYTES, SNIFFED_BYTES } from './settings.ts'

/** A text and what was doubtful about its characters. */
export interface DecodedText {
  readonly text: string
  readonly faults: readonly Fault[]
}

/**
 * Bytes as text: UTF-8, or UTF-16 with a byte order mark; a text that is neither is read as Western European with a
 * warning. Throws `MAR-FILE-003` (empty), `MAR-FILE-004` (over 64 MB) and `MAR-FILE-005` (not text).
 */
export function decodeText(bytes: Uint8Array, fileName: string): DecodedText {
  if (bytes.length === 0) throw new Failure('MAR-FILE-003', 'The file is empty.', fileName)
  if (bytes.length > LARGEST_SOURCE_BYTES) throw tooLarge(bytes.length, fileName)
  const wide = wideEncoding(bytes)
  if (wide) return { text: new TextDecoder(wide).decode(bytes), faults: [] }
  if (!looksLikeText(bytes)) throw notText(bytes, fileName)
  const text = decodeUtf8(bytes)
  if (text === null)
    return { text: new TextDecoder('windows-1252').decode(bytes), faults: [westernFault(fileName)] }
  if (text.trim() === '') throw new Failure('MAR-FILE-003', 'The file holds nothing but blanks.', fileName)
  return { text, faults: [] }
}

/** The failure for a source over the limit. */
export function tooLarge(size: number, fileName: string): Failure {
  const megabytes = (size / 1024 / 1024).toFixed(0)
  const limit = LARGEST_SOURCE_BYTES / 1024 / 1024
  return new Failure(
    'MAR-FILE-004',
    `The file has ${megabytes} MB; Marram reads up to ${limit} MB at once. Cut the source down to the course.`,
    fileName,
  )
}

function wideEncoding(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le'
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : null
}

function looksLikeText(bytes: Uint8Array): boolean {
  const end = Math.min(bytes.length, SNIFFED_BYTES)
  let controls = 0
  for (let i = 0; i < end; i++) {
    const byte = bytes[i] ?? 0
    if (byte === 0) return false
    if (byte < 32 && byte !== 9 && byte !== 10 && byte !== 12 && byte !== 13) controls++
  }
  return controls <= end * CONTROL_CHARACTER_SHARE
}

function notText(bytes: Uint8Array, fileName: string): Failure {
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b
  const isGzip = bytes[0] === 0x1f && bytes[1] === 0x8b
  const advice =
    isZip || isGzip ? 'It is packed: unpack it first.' : 'Marram reads map and table files made of text.'
  return new Failure('MAR-FILE-005', `The file is not text. ${advice}`, fileName)
}

function decodeUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return null
  }
}

function westernFault(fileName: string): Fault {
  return {
    severity: 'warning',
    code: 'MAR-IMPORT-030',
    message: 'The file is not valid UTF-8; it was read as Western European, so some letters may be wrong.',
    place: fileName,
    advice: 'Save it again as UTF-8 if names look odd.',
  }
}
