import { crc32, inflateRawSync } from 'node:zlib'
import { Failure } from '#faults/failure.ts'

/** A file out of a packed one. */
export interface Unzipped {
  /** Its name without folders. */
  readonly name: string
  readonly bytes: Uint8Array
}

// Marks and offsets: .ZIP File Format Specification (APPNOTE 6.3), 4.3.7, 4.3.12 and 4.3.16.
const LOCAL_HEADER = 0x04034b50
const DIRECTORY_ENTRY = 0x02014b50
const DIRECTORY_END = 0x06054b50

/**
 * The one file of a zip whose name ends in `ending`, at most `mostBytes` long. Throws `MAR-ELEV-004` when there is none
 * or more than one, and when it is damaged, enciphered, too long, or packed in a way other than deflate.
 */
export function unzipOne(zip: Uint8Array, ending: string, mostBytes: number, fileName: string): Unzipped {
  try {
    return unzip(zip, ending, mostBytes, fileName)
  } catch (error) {
    if (error instanceof Failure) throw error
    // Offsets that point outside and streams that do not inflate.
    throw refused('it is damaged or cut short', fileName)
  }
}

function unzip(zip: Uint8Array, ending: string, mostBytes: number, fileName: string): Unzipped {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength)
  const found = entries(zip, view).filter(({ name }) => name.toLowerCase().endsWith(ending))
  const [entry] = found
  if (entry === undefined || found.length > 1)
    throw refused(`it holds ${found.length} files ending in ${ending}; one is needed`, fileName)
  if (entry.isEnciphered) throw refused('it is enciphered', fileName)
  if (entry.size > mostBytes) throw refused(`${entry.name} is longer than any tile`, fileName)
  if (view.getUint32(entry.at, true) !== LOCAL_HEADER) throw refused('it is damaged', fileName)
  const start = entry.at + 30 + view.getUint16(entry.at + 26, true) + view.getUint16(entry.at + 28, true)
  const packed = zip.subarray(start, start + entry.packedSize)
  if (entry.method !== 0 && entry.method !== 8)
    throw refused(`its way of packing (${entry.method}) is not known`, fileName)
  const bytes = entry.method === 0 ? packed : inflateRawSync(packed, { maxOutputLength: mostBytes })
  if (bytes.length !== entry.size || crc32(bytes) !== entry.crc) throw refused('it is damaged', fileName)
  return { name: entry.name, bytes }
}

interface Entry {
  readonly name: string
  readonly isEnciphered: boolean
  readonly method: number
  readonly crc: number
  readonly packedSize: number
  readonly size: number
  /** Where its local header starts. */
  readonly at: number
}

function entries(zip: Uint8Array, view: DataView): Entry[] {
  let end = zip.length - 22
  while (view.getUint32(end, true) !== DIRECTORY_END) end--
  const found: Entry[] = []
  let at = view.getUint32(end + 16, true)
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    if (view.getUint32(at, true) !== DIRECTORY_ENTRY) throw new RangeError('no directory entry')
    const nameLength = view.getUint16(at + 28, true)
    const path = new TextDecoder().decode(zip.subarray(at + 46, at + 46 + nameLength))
    found.push({
      name: path.slice(path.lastIndexOf('/') + 1),
      isEnciphered: (view.getUint16(at + 8, true) & 1) === 1,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packedSize: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
    })
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true)
  }
  return found
}

function refused(reason: string, fileName: string): Failure {
  return new Failure('MAR-ELEV-004', `The packed file cannot be used: ${reason}.`, fileName)
}
