/// <reference types="vite/client" />
import { type FacePart, fileOf } from '#outside/print/faces.ts'

/** The published files of the printed faces by their paths, as this server has them. */
const ADDRESSES: Readonly<Record<string, string>> = import.meta.glob(
  [
    '../../../../node_modules/@fontsource/eb-garamond/files/eb-garamond-*-{400-normal,400-italic,600-normal}.woff',
    '../../../../node_modules/@fontsource/source-sans-3/files/source-sans-3-*-{400-normal,700-normal}.woff',
  ],
  { eager: true, query: '?url', import: 'default' },
)

const fetched = new Map<FacePart, Uint8Array>()

/** A part of a face that is not here yet. */
class PartMissing extends Error {
  readonly part: FacePart
  constructor(part: FacePart) {
    super(`${part} is not fetched yet`)
    this.part = part
  }
}

/** The bytes of a part that was fetched. Throws where it was not; `withFonts` then fetches it. */
export function fetchedPart(part: FacePart): Uint8Array {
  const bytes = fetched.get(part)
  if (bytes === undefined) throw new PartMissing(part)
  return bytes
}

/** Does work that sets letters, again after each part of a face that it lacked was fetched. Rejects where one cannot be. */
export async function withFonts<Made>(work: () => Made | Promise<Made>): Promise<Made> {
  for (;;) {
    try {
      return await work()
    } catch (error) {
      if (!(error instanceof PartMissing)) throw error
      fetched.set(error.part, await fetchPart(error.part))
    }
  }
}

async function fetchPart(part: FacePart): Promise<Uint8Array> {
  const address = Object.entries(ADDRESSES).find(([path]) => path.endsWith(fileOf(part)))?.[1]
  if (address === undefined) throw new RangeError(`no file of ${part}`)
  const answer = await fetch(address)
  if (!answer.ok) throw new Error(`The letters of the page cannot be fetched (${answer.status}).`)
  return new Uint8Array(await answer.arrayBuffer())
}
