import { type LazyExoticComponent, lazy, type ReactElement, Suspense, useState } from 'react'
import type { KeyList } from './key-list.tsx'
import { useCommands } from './use-commands.ts'

const Keys: LazyExoticComponent<typeof KeyList> = lazy(() =>
  import('./key-list.tsx').then((part) => ({ default: part.KeyList })),
)

/** What any page lays over itself by a command: the list of keys. */
export function CommandSheets(): ReactElement | null {
  const [shown, setShown] = useState<'keys' | null>(null)
  useCommands({ keys: () => setShown('keys') })
  if (shown === null) return null
  return (
    <Suspense fallback={null}>
      <Keys onClose={() => setShown(null)} />
    </Suspense>
  )
}
