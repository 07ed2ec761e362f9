import {
  type KeyboardEvent,
  type ReactElement,
  useEffect,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react'
import { Picture } from '../chart/picture.tsx'
import { onKeys } from '../commands/on-keys.ts'
import { GoingCurves } from '../going/going-curves.tsx'
import { type Shown, type WallPicture, wallPictures } from './wall-pictures.ts'
import '../style/wall.css'

/**
 * The plan for the wall of a room: large type, one idea a picture, stepped by arrow keys, space or a tap on the picture.
 * Escape closes it.
 */
export function Wall(props: Shown & { readonly onClose: () => void }): ReactElement | null {
  const place = useRef<HTMLDialogElement>(null)
  const [at, setAt] = useState(0)
  const pictures = wallPictures(props, useIsTall())
  const now = Math.min(at, pictures.length - 1)
  const shown = pictures[now]
  const go = (to: number): void => setAt(Math.max(0, Math.min(pictures.length - 1, to)))
  useEffect(() => {
    const dialog = place.current
    if (dialog === null || dialog.open) return
    dialog.showModal()
    dialog.querySelector<HTMLElement>('.wall-on')?.focus()
  }, [])
  const onKeyDown = (event: KeyboardEvent): void => {
    // The keys of the desk below rest while it is covered.
    event.stopPropagation()
    const { target } = event
    // A choice keeps its keys, and space on a button presses it.
    if (target instanceof HTMLSelectElement || (event.key === ' ' && target instanceof HTMLButtonElement))
      return
    onKeys(event, 'wall', {
      on: () => go(now + 1),
      back: () => go(now - 1),
      first: () => go(0),
      last: () => go(pictures.length - 1),
    })
  }
  if (shown === undefined) return null
  return (
    <dialog
      ref={place}
      className="wall"
      aria-label="On the wall"
      onClose={props.onClose}
      onKeyDown={onKeyDown}
    >
      <h2 aria-live="polite">{shown.words}</h2>
      <div className="wall-picture">
        <WallDrawing picture={shown} {...props} onStep={() => go(now + 1)} />
      </div>
      <p className="wall-foot">
        <span>
          {props.plan.method.draws === 0 ? 'A first answer · ' : ''}
          {props.plan.course}, hole {props.hole.ref} · {props.plan.player} · picture {now + 1} of{' '}
          {pictures.length}
        </span>
        {/* Never truly disabled: the keys go with the focus, which a disabled button loses. */}
        <button type="button" aria-disabled={now === 0} onClick={() => go(now - 1)}>
          Back
        </button>
        <button
          type="button"
          className="wall-on"
          aria-disabled={now === pictures.length - 1}
          onClick={() => go(now + 1)}
        >
          On
        </button>
        <button type="button" onClick={() => place.current?.close()}>
          Close
        </button>
      </p>
    </dialog>
  )
}

function WallDrawing(
  props: Shown & { readonly picture: WallPicture; readonly onStep: () => void },
): ReactElement {
  const { picture, situation, reader } = props
  if (picture.drawing === null)
    return (
      <div className="wall-curves">
        <GoingCurves situation={situation} reader={reader} />
      </div>
    )
  return (
    // The buttons below do the same: a tap on the picture is only the nearest way.
    // biome-ignore lint/a11y/noStaticElementInteractions: see above
    // biome-ignore lint/a11y/useKeyWithClickEvents: keys are heard by the whole dialog
    <div className="wall-tap" onClick={props.onStep}>
      <Picture key={picture.words} drawing={picture.drawing} />
    </div>
  )
}

/** Whether the wall is higher than wide. */
function useIsTall(): boolean {
  return useSyncExternalStore(
    (onChange) => {
      addEventListener('resize', onChange)
      return () => removeEventListener('resize', onChange)
    },
    () => innerHeight > innerWidth,
  )
}
