import { type ComponentProps, type ReactElement, useState } from 'react'
import { useCommands } from '../commands/use-commands.ts'
import { LatePart, type LoadPart } from '../page/late-part.tsx'
import type { Wall } from './wall.tsx'

/** Shows pictures on the wall of a room, one idea a picture; `load` must be the same function every time. */
export function WallButton<Props extends { readonly onClose: () => void }>(props: {
  readonly load: LoadPart<Props>
  readonly show: Omit<NoInfer<Props>, 'onClose'>
}): ReactElement {
  const [isOpen, setOpen] = useState(false)
  const open = (): void => setOpen(true)
  useCommands({ wall: open })
  return (
    <>
      <button type="button" onClick={open}>
        On the wall
      </button>
      {isOpen && (
        <LatePart
          what="the pictures"
          load={props.load}
          show={{ ...props.show, onClose: () => setOpen(false) } as unknown as Props}
        />
      )}
    </>
  )
}

/** Fetches the wall for pictures that are at hand. */
export const loadWall: LoadPart<ComponentProps<typeof Wall>> = async () => (await import('./wall.tsx')).Wall
