import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type FacePart, fileOf } from './faces.ts'

const require = createRequire(import.meta.url)

/** The bytes of one part of a face, from the packages of both families, which lie beside Marram's own files. */
export function readPart(part: FacePart): Uint8Array {
  return readFileSync(require.resolve(`@fontsource/${fileOf(part)}`))
}
