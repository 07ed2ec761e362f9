import { type ReactElement, useState } from 'react'
import { LatePart } from '../page/late-part.tsx'
import { useCommands } from './use-commands.ts'

const loadKeys = async () => (await import('./key-list.tsx')).KeyList
const loadFind = async () => (await import('./find-sheet.tsx')).FindSheet

/** What any page lays over itself by a command: the list of keys, and the field that finds. */
export function CommandSheets(): ReactElement | null {
  const [shown, setShown] = useState<'keys' | 'find' | null>(null)
  useCommands({ keys: () => setShown('keys'), find: () => setShown('find') })
  if (shown === null) return null
  const show = { onClose: () => setShown(null) }
  return shown === 'keys' ? (
    <LatePart key="keys" what="the list of keys" load={loadKeys} show={show} />
  ) : (
    <LatePart key="find" what="the field that finds" load={loadFind} show={show} />
  )
}
