import { type ComponentProps, type ReactElement, useState } from 'react'
import { useCommands } from '../commands/use-commands.ts'
import { LatePart } from '../page/late-part.tsx'
import type { Wall } from './wall.tsx'

const loadWall = async () => (await import('./wall.tsx')).Wall

/** Shows the plan on the wall of a room, one idea a picture. */
export function WallButton(props: Omit<ComponentProps<typeof Wall>, 'onClose'>): ReactElement {
  const [isOpen, setOpen] = useState(false)
  const open = (): void => setOpen(true)
  useCommands({ wall: open })
  return (
    <>
      <button type="button" onClick={open}>
        On the wall
      </button>
      {isOpen && (
        <LatePart what="the pictures" load={loadWall} show={{ ...props, onClose: () => setOpen(false) }} />
      )}
    </>
  )
}
