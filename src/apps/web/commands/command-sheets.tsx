import { type ReactElement, useState } from 'react'
import { LatePart } from '../page/late-part.tsx'
import { useCommands } from './use-commands.ts'

const loadKeys = async () => (await import('./key-list.tsx')).KeyList

/** What any page lays over itself by a command: the list of keys. */
export function CommandSheets(): ReactElement | null {
  const [shown, setShown] = useState<'keys' | null>(null)
  useCommands({ keys: () => setShown('keys') })
  if (shown === null) return null
  return <LatePart what="the list of keys" load={loadKeys} show={{ onClose: () => setShown(null) }} />
}
