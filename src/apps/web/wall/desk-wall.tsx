import type { ReactElement } from 'react'
import { deskPictures, type Shown } from './desk-pictures.tsx'
import { Wall } from './wall.tsx'

/** The plan at hand for the wall of a room. */
export function DeskWall(props: Shown & { readonly onClose: () => void }): ReactElement {
  const { plan, hole, onClose } = props
  return (
    <Wall
      pictures={(isTall) => deskPictures(props, isTall)}
      foot={`${plan.method.draws === 0 ? 'A first answer · ' : ''}${plan.course}, hole ${hole.ref} · ${plan.player}`}
      onClose={onClose}
    />
  )
}
